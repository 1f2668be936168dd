-- Salt of the water an area gets, and the salt its turf is to be kept at; dS/m. Both or none.
ALTER TABLE area_setting ADD COLUMN water_ec REAL CHECK (water_ec BETWEEN 0 AND 60);
ALTER TABLE area_setting ADD COLUMN soil_ec_limit REAL
    CHECK ((soil_ec_limit IS NULL) = (water_ec IS NULL) AND (soil_ec_limit IS NULL OR soil_ec_limit > 0));
