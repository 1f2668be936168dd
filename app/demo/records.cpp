// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/demo/scenario.h"

namespace evenfall::demo {

std::string sites_table() {
    return "site,name,organisation,latitude,longitude,elevation_ft,time_zone,weather\n"
           "HB,Harrow Bend home farm,Harrow Bend Turf,38.41,-121.35,62,\"PST8PDT,M3.2.0,M11.1.0\",HBW\n"
           "AV,Alder Vale main campus,Alder Vale College,38.62,-121.18,141,\"PST8PDT,M3.2.0,M11.1.0\",AVW\n";
}

std::string areas_table() {
    return "area,site,name,size_ac,plant,head_type,soil,root_depth_in,slope_percent,meter,share\n"
           "HB-NORTH,HB,North block,18.4,cool-season,solid_set,loam,8,1,HB-M1,0.6\n"
           "HB-RIVER,HB,River block,12.3,cool-season,solid_set,sandy loam,8,1,HB-M1,0.4\n"
           "HB-EAST,HB,East reel field,22.0,warm-season,traveller,clay loam,9,2,HB-M2,\n"
           "HB-WEST,HB,West reel field,16.5,warm-season,traveller,clay loam,9,2,HB-M2,\n"
           "HB-CIRC1,HB,Circle one,61.8,cool-season,pivot,loam,9,1,HB-M3,\n"
           "HB-CIRC2,HB,Circle two,30.7,warm-season,pivot,loam,9,1,HB-M4,\n"
           "AV-COMMON,AV,Commons lawn,3.2,cool-season,rotor,clay loam,7,2,AV-M1,\n"
           "AV-PLAY,AV,Playing field,2.6,cool-season,rotor,sandy loam,7,1,AV-M2,\n"
           "AV-WALK,AV,Library walk,0.9,cool-season,spray,clay loam,6,4,AV-M3,\n"
           "AV-GATE,AV,Gate lawns,0.6,cool-season,spray,clay loam,6,6,AV-M3,\n";
}

std::string meters_table() {
    return "meter,site,unit,multiplier,digits,installed,removed,replaces\n"
           "HB-M1,HB,acre_ft,1,6,2019-03-04,,\n"
           "HB-M2,HB,kgal,1,7,2019-03-04,,\n"
           "HB-M3,HB,kgal,1,7,2016-05-11,2025-06-18,\n"
           "HB-M3B,HB,kgal,1,7,2025-06-18,,HB-M3\n"
           "HB-M4,HB,kgal,1,7,2018-04-20,,\n"
           "AV-M1,AV,gal,1,8,2020-01-15,,\n"
           "AV-M2,AV,ccf,1,6,2020-01-15,,\n"
           "AV-M3,AV,gal,100,5,2020-01-15,,\n";
}

std::string weather_stations_table() {
    return "station,latitude,longitude,elevation_ft,wind_height_ft\n"
           "HBW,38.40,-121.36,60,10\n"
           "AVW,38.62,-121.18,145,6.6\n";
}

std::vector<TableFile> scenario_files() {
    return {{"sites.csv", sites_table()},
            {"weather-stations.csv", weather_stations_table()},
            {"meters.csv", meters_table()},
            {"areas.csv", areas_table()},
            {"weather.csv", weather_table()},
            {"readings.csv", readings_table()},
            {"catches-grid.csv", grid_catches_table()},
            {"catches-pivot.csv", pivot_catches_table()},
            {"catches-traveller.csv", traveller_catches_table()}};
}

}  // namespace evenfall::demo
