// SPDX-License-Identifier: GPL-3.0-or-later
// The words of conflicts, found again in the texts that the importers make. All CONSTRUCTED.
#include "core/exchange/conflict_words.h"

#include "tests/exchange/import_desk.h"

#include <set>

using namespace evenfall;
using namespace evenfall::exchange;

namespace {

/// A table that goes in, and one that says something else of the same record.
struct Contradiction {
    const char* name;
    std::string first;
    std::string second;
};

const std::vector<Contradiction>& contradictions() {
    static const std::vector<Contradiction> all{
        {"site", "site,name,latitude,elevation_m\nT,Two,40,100\n", "site,name,latitude,elevation_m,longitude\nT,Third,41,100,-120\n"},
        {"meter", "meter,site,unit\nM-2,S,gal\n", "meter,site,unit,digits\nM-2,S,ccf,6\n"},
        {"area", "area,site,size_ac\nB,S,2\n", "area,site,size_ac,name\nB,S,3,\"Back, left\"\n"},
        {"weather station", "station,latitude\nW,40\n", "station,latitude,longitude\nW,41,-120\n"},
        {"reading", "meter,time,register\nM,2024-06-30T06:00,5\n", "meter,time,register,kind\nM,2024-06-30T06:00,6,estimated\n"},
        {"volume", "meter,time,volume,minutes\nM,2024-07-30T06:00,5,15\n",
         "meter,time,volume,minutes,kind\nM,2024-07-30T06:00,6,15,corrected\n"},
        {"bill", "meter,from,to,billed_ccf\nM,2024-06-01,2024-07-01,5\n", "meter,from,to,billed_ccf\nM,2024-06-01,2024-07-01,6\n"},
        {"day", "station,date,tmax_f\nW1,2024-06-30,90\n", "station,date,tmax_f,tmin_f\nW1,2024-06-30,91,50\n"},
        {"day in other units", "station,date,tmax_f\nW2,2024-06-30,90\n", "station,date,tdew_c\nW2,2024-06-30,9\n"},
        {"hour", "station,hour_start,tmean_f\nW1,2024-06-30T13:00:00-07:00,90\n", "station,hour_start,tmean_f\nW1,2024-06-30T13:00:00-07:00,91\n"},
        {"pressure", "test,place,pressure_psi\nT1,head at the road,52\n",
         "test,place,pressure_psi,nozzle_low_psi,nozzle_high_psi\nT1,head at the road,50,45,60\n"},
        {"finding", "test,finding,place,severity\nT1,tilted,row 2,minor\n", "test,finding,place,severity,corrected\nT1,tilted,row 2,severe,yes\n"},
        {"finding without a place", "test,finding\nT1,leaking_head\n", "test,finding,count\nT1,leaking_head,4\n"},
        {"inspection", "test,finding\nT2,none\n", "test,finding\nT2,tilted\n"},
        {"planting", "area,kind,from,coefficient\nA,shade,2024-10-01,0.8\n",
         "area,kind,from,to,coefficient\nA,shade,2024-10-01,2024-11-01,0.9\n"},
        {"watering rule", "site,days,starts,ends,stations_at_once\nS,mon,22:00,06:00,2\n",
         "site,days,starts,ends,stations_at_once\nS,mon fri,22:00,06:00,1\n"},
        {"settings", "area,off_target,off_target_source\nA,0.06,gross against net\n",
         "area,off_target,off_target_source,special,water_ec_ds_m,soil_ec_limit_ds_m\nA,0.07,\"sheet, page 2\",yes,1.2,4\n"}};
    return all;
}

struct Desk : tests::ImportDesk {
    Desk()
        : ImportDesk({"site,name,latitude,elevation_m\nS,Site,40,100\n", "meter,site,unit\nM,S,gal\n", "area,site,size_ac\nA,S,2\n",
                      "test,area,date,can,depth_mm\nT1,A,2026-04-20,1,5\nT2,A,2026-04-21,1,5\n"}) {}
};

}  // namespace

TEST_CASE("every record and value of a conflict is known by its words, and reads the same", "[exchange][constructed]") {
    Desk desk;
    std::set<std::string> forms;
    for (const Contradiction& c : contradictions()) {
        CAPTURE(c.name);
        const auto first = desk.put(c.first);
        for (const Issue& issue : first.issues) UNSCOPED_INFO(issue.text());
        REQUIRE(first.stored);
        const auto second = desk.put(c.second);
        for (const Issue& issue : second.issues) UNSCOPED_INFO(issue.text());
        REQUIRE(second.conflict_list.size() == 1);
        const Conflict& conflict = second.conflict_list.front();
        CAPTURE(conflict.record, conflict.in_book, conflict.in_file);
        const Sentence record = record_words(conflict.record);
        CHECK(record == conflict.record);
        CHECK(record.form().form != nullptr);
        forms.emplace(record.form().english());
        CHECK(value_words(conflict.record, conflict.in_book) == conflict.in_book);
        CHECK(value_words(conflict.record, conflict.in_file) == conflict.in_file);
    }
    CHECK(forms.size() == contradictions().size() - 1);  // the two days are of one form
}

TEST_CASE("the parts of a value that the importer words are told from the user's", "[exchange]") {
    const auto forms = [](const std::string& record, const std::string& value) {
        std::vector<std::string> out;
        const Sentence words = value_words(record, value);
        for (const Sentence& part : words.values()) out.emplace_back(part.form().english());
        return out;
    };
    using Forms = std::vector<std::string>;
    CHECK(forms("reading of M-1 at 2024-06-30T13:00:00Z", "5, estimated") == Forms{"", "estimated"});
    CHECK(forms("weather of W on 2024-06-30", "tdew not recorded, its like in f") == Forms{"%1 not recorded", "its like in %1"});
    CHECK(forms("site S", "name Käfer, Wiese, longitude not recorded") == Forms{"", "", "%1 not recorded"});
    CHECK(forms("site S", "name estimated") == Forms{""});
    CHECK(forms("findings of test T", "inspected, nothing found") == Forms{"inspected", "nothing found"});
    CHECK(forms("settings of A", "off target 0.07 (sheet, page 2), special, water 1.2 dS/m, soil kept at 4 dS/m") ==
          Forms{"", "", "special", "water %1 dS/m", "soil kept at %1 dS/m"});
}

TEST_CASE("a name may hold the words between the places, and an unknown text stays", "[exchange]") {
    const Sentence pressure = record_words("pressure of test A at B at the road");
    CHECK(pressure == "pressure of test A at B at the road");
    CHECK(pressure.values().size() == 2);
    CHECK(record_words("weather station at 5").form().english() == "weather station %1");
    CHECK(record_words("something else").form().form == nullptr);
    CHECK(record_words("something else") == "something else");
    CHECK(value_words("something else", "5, estimated").values().empty());
    CHECK(record_words("").empty());
}
