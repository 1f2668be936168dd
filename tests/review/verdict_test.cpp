// SPDX-License-Identifier: GPL-3.0-or-later
// CONSTRUCTED filings with known verdicts: honest ones, honest ones with odd habits, ones that lack
// something or break a rule, and tampered ones. Nothing here is published data.
#include "core/review/decision.h"
#include "core/input_error.h"
#include "tests/review/sample_filing.h"

#include <catch2/catch.hpp>

#include <functional>

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using namespace evenfall;
using namespace evenfall::review;
using audit::QuarterRule;
using tests::claim;
using tests::sample_filing;
using tests::SampleChoices;

namespace {

Review judged(const Filing& f, const char* program = "rebate-sport-heads") {
    const RebateProgram p = built_in_rebate(program);
    return review_filing(f, std::string(64, 'a'), false, &p, std::nullopt);
}

std::string account(const Review& r) {
    std::string text = std::string(text_of(r.decision)) + "\n";
    for (const auto& c : r.claims) text += "claim " + c.claim.name + " " + c.claim.text + " " + std::string(text_of(c.agreement)) + ": " + c.why.english() + "\n";
    for (const auto& j : r.rules) text += std::string(text_of(j.outcome)) + " " + j.words + ": " + j.why.english() + "\n";
    for (const auto& q : r.questions) text += "? " + q.sentence.english() + "\n";
    return text;
}

bool asks(const Review& r, const std::string& key) {
    return std::any_of(r.questions.begin(), r.questions.end(), [&](const Question& q) { return q.key == key; });
}

double du(const Filing& f, std::size_t test, QuarterRule rule) {
    return audit::analyse_uniformity(f.tests[test].test, rule).du_lq.value();
}

/// The claim of DU_LQ of a test, replaced.
void claim_du(Filing& f, const std::string& test, const Claim& with) {
    for (Claim& c : f.claims) {
        if (c.name == "du_lq" && c.subject == test) c = with;
    }
}

FiledArea& area(Filing& f) { return f.areas.front(); }

struct Case {
    const char* name;
    std::function<Filing()> make;
    std::string why = "";  ///< expected in the account; empty: not looked at
};

Filing with(SampleChoices choices, const std::function<void(Filing&)>& change) {
    Filing f = sample_filing(choices);
    change(f);
    return f;
}

SampleChoices seeded(std::uint64_t seed) {
    SampleChoices c;
    c.seed = seed;
    return c;
}

SampleChoices cans(int n) {
    SampleChoices c;
    c.cans = n;
    return c;
}

/// Rectangle of longitudes and latitudes of about that size at the sample's place.
std::vector<std::pair<double, double>> outline_of(double m2) {
    const double side = std::sqrt(m2);
    const double dy = side / 111000.0;
    const double dx = side / 87100.0;
    return {{-121.5, 38.5}, {-121.5 + dx, 38.5}, {-121.5 + dx, 38.5 + dy}, {-121.5, 38.5 + dy}};
}

}  // namespace

TEST_CASE("honest filings are approved and not flagged", "[verdict][constructed]") {
    std::vector<Case> cases;
    for (std::uint64_t seed = 1; seed <= 8; ++seed) cases.push_back({"plain", [seed] { return sample_filing(seeded(seed)); }});
    cases.push_back({"metric", [] { SampleChoices c; c.metric = true; return sample_filing(c); }});
    cases.push_back({"read to 5 mL", [] { SampleChoices c; c.catch_step = 5.0; return sample_filing(c); }});
    cases.push_back({"40 cans", [] { return sample_filing(cans(40)); }});
    for (const QuarterRule rule : {QuarterRule::nearest, QuarterRule::round_up, QuarterRule::part_can}) {
        cases.push_back({"another quarter rule, not said", [rule] {
            return with(cans(22), [&](Filing& f) { claim_du(f, "T-AFTER", claim("du_lq", "T-AFTER", du(f, 1, rule), 3)); });
        }});
    }
    cases.push_back({"another quarter rule, said", [] {
        return with(cans(22), [&](Filing& f) {
            Claim c = claim("du_lq", "T-AFTER", du(f, 1, QuarterRule::part_can), 4);
            c.quarter_rule = "part-can";
            claim_du(f, "T-AFTER", c);
        });
    }});
    cases.push_back({"per cent", [] { return with({}, [](Filing& f) { claim_du(f, "T-AFTER", claim("du_lq", "T-AFTER", 100 * du(f, 1, QuarterRule::whole_cans), 1, "%")); }); }});
    cases.push_back({"per cent, not said", [] { return with({}, [](Filing& f) { claim_du(f, "T-AFTER", claim("du_lq", "T-AFTER", 100 * du(f, 1, QuarterRule::whole_cans), 1)); }); }, "per cent without saying so"});
    cases.push_back({"cut, not rounded", [] {
        return with(seeded(3), [](Filing& f) {
            // A step below the rounded one whenever the third decimal is 5 or more.
            const double d = du(f, 1, QuarterRule::whole_cans);
            claim_du(f, "T-AFTER", claim("du_lq", "T-AFTER", std::floor(d * 1000) / 1000, 3));
        });
    }});
    cases.push_back({"means rounded on the sheet", [] {
        return with(seeded(5), [](Filing& f) {
            const auto u = audit::analyse_uniformity(f.tests[1].test, QuarterRule::whole_cans);
            const units::Depth ml = units::millilitre / f.tests[1].test.throat_area->quantity();
            claim_du(f, "T-AFTER", claim("du_lq", "T-AFTER", std::round(u.low_quarter_mean.in(ml)) / std::round(u.mean.in(ml)), 3));
        });
    }});
    cases.push_back({"use rounded to thousands", [] {
        return with({}, [](Filing& f) {
            const auto record = use_record(f);
            double gallons = 0.0;
            for (const auto& s : record.before) gallons += s.use.in(units::us_gallon);
            f.claims.push_back(claim("use_before", "", 1000.0 * std::round(gallons / 1000.0), 0, "gal"));
            f.claims.push_back(claim("use_before", "", gallons / 748.051948, 0, "ccf"));
        });
    }});
    cases.push_back({"mean depth in inches", [] {
        return with({}, [](Filing& f) { f.claims.push_back(claim("mean_depth", "T-AFTER", audit::analyse_uniformity(f.tests[1].test, QuarterRule::nearest).mean.in(units::inch), 3, "in")); });
    }});
    cases.push_back({"saving a little off, inside the interval", [] { return with({}, [](Filing& f) { f.claims.push_back(claim("savings_share", "", 0.19, 2)); }); }});
    cases.push_back({"a can left out with a reason", [] {
        return with({}, [](Filing& f) {
            f.tests[1].test.catches[4].excluded = "kicked over";
            claim_du(f, "T-AFTER", claim("du_lq", "T-AFTER", du(f, 1, QuarterRule::whole_cans), 2));
            f.claims[3].text = units::format_fixed(audit::analyse_uniformity(f.tests[1].test, QuarterRule::whole_cans).mean.in(units::millimetre), 2);
        });
    }});
    cases.push_back({"outline about right, cost and devices", [] {
        return with({}, [](Filing& f) {
            area(f).outline = outline_of(area(f).area.size.quantity().si() * 1.02);
            f.claims.push_back(claim("area_size", "FIELD", 2.0, 1, "ac"));
            f.claims.push_back(claim("cost", "", 4200, 2, "USD"));
            f.claims.push_back(claim("devices", "nozzle", 120, 0));
            f.claims.push_back(claim("cans", "T-AFTER", 24, 0));
        });
    }});
    REQUIRE(cases.size() >= 22);
    for (const Case& c : cases) {
        const Filing f = c.make();
        const Review r = judged(f);
        INFO(c.name << " " << f.code << "\n" << account(r));
        CHECK(r.decision == Decision::approve);
        CHECK(r.recomputes());
        CHECK(r.questions.empty());
        if (!c.why.empty()) CHECK_THAT(account(r), Contains(c.why));
    }
}

TEST_CASE("what is missing is asked for", "[verdict][constructed]") {
    const std::vector<Case> cases{
        {"no invoice file", [] { return with({}, [](Filing& f) { f.request.invoices[0].attachment.clear(); }); }, "a copy of invoice INV-1"},
        {"no invoice", [] { return with({}, [](Filing& f) { f.request.invoices.clear(); }); }, "an invoice"},
        {"no wind", [] { return with({}, [](Filing& f) { f.tests[0].test.wind.reset(); }); }, "the wind during test T-BEFORE"},
        {"no expiry", [] { return with({}, [](Filing& f) { f.auditor.expires.reset(); }); }, "expiry of the auditor's certification"},
        {"no test after", [] { return with({}, [](Filing& f) { f.tests.pop_back(); f.claims.resize(2); }); }, "a catch test made after the work"},
        {"no sector", [] { return with({}, [](Filing& f) { area(f).sector.clear(); }); }, "the sector of area FIELD"},
        {"DU on the edge", [] { SampleChoices c; c.after_unevenness = 0.25; c.before_unevenness = 0.5; c.seed = 4; return sample_filing(c); }, "a test with more cans"}};
    for (const Case& c : cases) {
        const Review r = judged(c.make());
        INFO(c.name << "\n" << account(r));
        CHECK(r.decision == Decision::send_more);
        std::string missing;
        for (const auto& m : r.missing) missing += m.english() + "\n";
        CHECK_THAT(missing, Contains(c.why));
        const RebateProgram p = built_in_rebate("rebate-sport-heads");
        CHECK_THAT(letter(r, &p), Contains(c.why) && Contains("please send"));
    }
}

TEST_CASE("broken rules are named", "[verdict][constructed]") {
    const std::vector<Case> cases{
        {"windy test", [] { return with({}, [](Filing& f) { f.tests[1].test.wind = units::parse_measure<units::Speed>("9mph"); }); }, "wind of 9 mph"},
        {"expired", [] { return with({}, [](Filing& f) { f.auditor.expires = calendar::parse_date("2024-01-31"); }); }, "expired on 2024-01-31"},
        {"uneven after", [] { SampleChoices c; c.after_unevenness = 0.33; c.before_unevenness = 0.5; return sample_filing(c); }, "probability of reaching"},
        {"too old", [] { return with({}, [](Filing& f) { f.written = *calendar::parse_instant("2026-06-01T00:00:00Z"); }); }, "days before the filing"},
        {"wrong sector", [] { return with({}, [](Filing& f) { area(f).sector = "home"; }); }, "sector home"},
        {"too small", [] { return with({}, [](Filing& f) { area(f).area.size = units::parse_measure<units::Area>("0.4ac"); }); }, "0.400 ac"},
        {"too few cans", [] { return sample_filing(cans(16)); }, "16 cans"}};
    for (const Case& c : cases) {
        const Review r = judged(c.make());
        INFO(c.name << "\n" << account(r));
        CHECK(r.decision == Decision::decline);
        CHECK_THAT(account(r), Contains(c.why));
    }
}

TEST_CASE("tampered figures do not pass", "[verdict][constructed]") {
    const std::vector<Case> cases{
        {"DU raised", [] { return with({}, [](Filing& f) { claim_du(f, "T-AFTER", claim("du_lq", "T-AFTER", du(f, 1, QuarterRule::whole_cans) + 0.05, 2)); }); }, "du_lq"},
        {"a reading changed after the claims were made", [] { return with({}, [](Filing& f) { f.tests[1].test.catches[0].reading = 21.0; }); }, "differs"},
        {"left-out cans counted again", [] {
            return with({}, [](Filing& f) {
                f.tests[0].test.catches[2].excluded = "under a tree";
                f.tests[0].test.catches[2].reading = 3.0;
                auto whole = f.tests[0].test;
                whole.catches[2].excluded.clear();
                claim_du(f, "T-BEFORE", claim("du_lq", "T-BEFORE", audit::analyse_uniformity(whole, QuarterRule::whole_cans).du_lq.value(), 3));
                f.claims.erase(f.claims.begin() + 1);
            });
        }, "only when the cans that the sheet leaves out are counted"},
        {"savings by plain difference, twice what they are", [] { SampleChoices c; c.true_saving = 0.05; return with(c, [](Filing& f) { f.claims.push_back(claim("savings_share", "", 0.25, 2)); }); }, "outside our 90 % interval"},
        {"use before raised", [] { return with({}, [](Filing& f) { f.claims.push_back(claim("use_before", "", 9876543, 0, "gal")); }); }, "use_before"},
        {"cost raised", [] { return with({}, [](Filing& f) { f.claims.push_back(claim("cost", "", 5200, 2, "USD")); }); }, "cost"},
        {"more devices than listed", [] { return with({}, [](Filing& f) { f.claims.push_back(claim("devices", "nozzle", 180, 0)); }); }, "devices"},
        {"area claimed larger than drawn", [] {
            return with({}, [](Filing& f) {
                area(f).outline = outline_of(area(f).area.size.quantity().si() * 0.7);
                f.claims.push_back(claim("area_size", "FIELD", 2.0, 1, "ac"));
            });
        }, "area_size"}};
    for (const Case& c : cases) {
        const Review r = judged(c.make());
        INFO(c.name << "\n" << account(r));
        CHECK_FALSE(r.recomputes());
        CHECK(r.decision == Decision::decline);
        CHECK_THAT(account(r), Contains(c.why));
        CHECK(r.risk() >= 3.0);
    }
}

TEST_CASE("signs of trouble are asked about, not judged", "[verdict][constructed]") {
    struct Sign {
        const char* key;
        std::function<void(Filing&)> change;
    };
    const auto copy_claims = [](Filing& f) {
        f.claims.clear();
        for (const FiledTest& t : f.tests) f.claims.push_back(claim("du_lq", t.test.code, audit::analyse_uniformity(t.test, QuarterRule::whole_cans).du_lq.value(), 2));
    };
    const std::vector<Sign> signs{
        {"copied_cans", [&](Filing& f) { f.tests[1].test.catches = f.tests[0].test.catches; copy_claims(f); }},
        {"copied_cans", [&](Filing& f) {
             f.tests[1].test.catches = f.tests[0].test.catches;
             auto& c = f.tests[1].test.catches;
             for (std::size_t i = 0; i + 1 < c.size(); i += 2) std::swap(c[i].reading, c[i + 1].reading);
             std::swap(c[0].reading, c[c.size() - 1].reading);
             copy_claims(f);
         }},
        {"one_factor", [&](Filing& f) {
             f.tests[1].test.catches = f.tests[0].test.catches;
             for (auto& c : f.tests[1].test.catches) c.reading = std::round(c.reading * 1.3);
             copy_claims(f);
         }},
        {"even_digits", [&](Filing& f) {
             int i = 0;
             for (auto& t : f.tests) {
                 for (auto& c : t.test.catches) {
                     c.reading = 10.0 * std::round(c.reading / 10.0 + 1.0) + (i * 3) % 10;
                     ++i;
                 }
             }
             copy_claims(f);
         }},
        {"rain", [](Filing& f) {
             for (auto& d : f.weather.days) {
                 if (d.date == f.tests[1].test.date) d.rain = 0.6;
             }
         }},
        {"wind", [](Filing& f) {
             for (auto& d : f.weather.days) {
                 if (d.date == f.tests[1].test.date) d.wind = 14.0;
             }
         }},
        {"outline", [](Filing& f) { area(f).outline = outline_of(area(f).area.size.quantity().si() * 0.8); }},
        {"order_of_dates", [](Filing& f) { f.request.change = calendar::parse_date("2023-06-30"); }},
        {"order_of_dates", [](Filing& f) { f.request.invoices[0].date = calendar::parse_date("2025-03-01"); }},
        {"run_hours", [](Filing& f) {
             for (auto& r : f.meters[0].readings) r.value = 1000.0 + 40.0 * (r.value - 1000.0);
         }},
        {"meter_in_test", [](Filing& f) {
             auto& readings = f.meters[0].readings;
             const auto at = std::find_if(readings.begin(), readings.end(), [](const meter::Reading& r) { return r.at > *calendar::parse_instant("2024-07-18T00:00:00Z"); });
             const double value = std::prev(at)->value + 1.0;
             const auto made = [&](const char* when, double v) { return meter::Reading{*calendar::parse_instant(when), std::chrono::seconds(0), v, meter::ReadingKind::measured}; };
             readings.insert(at, {made("2024-07-18T13:00:00Z", value), made("2024-07-18T13:40:00Z", value + 2.0)});
         }}};
    for (const Sign& sign : signs) {
        Filing f = sample_filing();
        REQUIRE(questions(f).empty());
        sign.change(f);
        const Review r = judged(f);
        INFO(sign.key << "\n" << account(r));
        CHECK(asks(r, sign.key));
        for (const Question& q : r.questions) {
            CHECK(q.sentence.english().back() == '?');
            CHECK_FALSE(q.evidence.empty());
        }
        CHECK(r.risk() > judged(sample_filing()).risk());
    }
}

TEST_CASE("numbers as people type them", "[verdict][constructed]") {
    const auto verdict_of = [](const std::string& text, double cost) {
        Filing f = sample_filing();
        f.request.invoices[0].amount = cost;
        f.claims = {{"cost", "", text, "USD", ""}};
        const auto r = judged(f);
        return std::string(text_of(r.claims[0].agreement));
    };
    CHECK(verdict_of("4,200", 4200) == "agrees");
    CHECK(verdict_of("4,200.50", 4200.5) == "agrees");
    CHECK(verdict_of("1,234,567", 1234567) == "agrees");
    CHECK(verdict_of("4200", 4200.4) == "agrees");
    CHECK(verdict_of("4200", 4200.6) == "explained");  // cut
    CHECK(verdict_of("4200", 4230) == "differs");      // hundreds are over 2 % of it: too coarse to be meant
    CHECK(verdict_of("420000", 420300) == "explained");  // rounded to thousands or coarser
    CHECK(verdict_of("42,00", 4200) == "cannot tell");
    CHECK(verdict_of("0,72", 0.72) == "cannot tell");
    CHECK(verdict_of("1,23", 123) == "cannot tell");
    CHECK(verdict_of("12,3456", 123456) == "cannot tell");
    CHECK(verdict_of("4.2e3", 4200) == "cannot tell");
    CHECK(verdict_of("-4200", 4200) == "differs");
    CHECK(verdict_of("about 4200", 4200) == "cannot tell");
}

TEST_CASE("payment line by line", "[verdict][constructed]") {
    // 120 nozzles x 8 = 960; half of the invoices is 2,100; 2 ac allow 1,800: nothing is cut.
    Filing f = sample_filing();
    Review r = judged(f);
    REQUIRE(r.payment);
    REQUIRE(r.payment->lines.size() == 2);
    CHECK(r.payment->lines[0].working == "120 x 8.00");
    CHECK(r.payment->total == 960.0);
    CHECK(r.payment->currency == "USD");
    // 400 nozzles: at most 300 x 8 = 2,400 and 5 regulators x 60 = 300; cut to half the invoices,
    // 2,100, then to 900 for each of 2 acres, 1,800.
    f.request.devices = {{"nozzle", 400}, {"pressure regulator", 5}};
    r = judged(f);
    REQUIRE(r.payment->lines.size() == 4);
    CHECK(r.payment->lines[0].amount == 2400.0);
    CHECK(r.payment->lines[1].amount == 300.0);
    CHECK(r.payment->lines[2].amount == -600.0);
    CHECK_THAT(r.payment->lines[3].amount, WithinAbs(-300.0, 1e-9));
    CHECK(r.payment->total == 1800.0);
    double sum = 0.0;
    for (const auto& line : r.payment->lines) sum += line.amount;
    CHECK_THAT(sum, WithinAbs(r.payment->total, 1e-9));
}

TEST_CASE("payment by water saved", "[verdict][constructed]") {
    const Review r = judged(sample_filing(), "rebate-saved-water");
    INFO(account(r));
    REQUIRE(r.savings.savings);
    CHECK(r.decision == Decision::approve);
    CHECK(r.savings.savings->fraction > 0.12);
    CHECK(r.savings.savings->fraction < 0.28);
    const double kgal = r.savings.savings->saved / units::thousand_gallons.si();
    CHECK_THAT(r.payment->total, WithinAbs(2.5 * kgal, 0.005 + 1e-9));
    SampleChoices none;
    none.true_saving = 0.0;
    const Review zero = judged(sample_filing(none), "rebate-saved-water");
    INFO(account(zero));
    CHECK(zero.decision == Decision::decline);
}

TEST_CASE("signed, photos, share of cost", "[verdict][constructed]") {
    Filing f = sample_filing();
    area(f).sector = "campus";
    f.attachments.push_back({"attachments/1.jpg", "photo", std::string(64, '1'), 1, ""});
    f.attachments.push_back({"attachments/2.jpg", "photo", std::string(64, '2'), 1, ""});
    Review r = judged(f, "rebate-controllers");
    INFO(account(r));
    CHECK(r.decision == Decision::send_more);
    const RebateProgram p = built_in_rebate("rebate-controllers");
    const Review ok = review_filing(f, std::string(64, 'a'), true, &p, 100.0);
    INFO(account(ok));
    CHECK(ok.decision == Decision::approve);
    CHECK(ok.payment->total == 2100.0);
    CHECK_THAT(ok.payment->lines.back().working.english(), Contains("100.00 USD left"));
}

TEST_CASE("filings of one case are put together", "[verdict][constructed]") {
    Filing before = sample_filing();
    Filing after = before;
    before.tests.pop_back();
    after.tests.erase(after.tests.begin());
    const Filing both = together({before, after});
    CHECK(both.tests.size() == 2);
    CHECK(both.meters.size() == 1);
    CHECK(both.meters[0].readings == before.meters[0].readings);
    CHECK(both.weather.days.size() == before.weather.days.size());
    after.site.code = "ELSE";
    CHECK_THROWS_AS(together({before, after}), InputError);
    after = before;
    after.tests[0].test.catches[0].reading += 1;
    CHECK_THROWS_WITH(together({before, after}), Contains("T-BEFORE"));
}

TEST_CASE("the same photo, invoice or readings in two filings", "[verdict][constructed]") {
    const auto a = fingerprints(sample_filing(seeded(1)));
    const auto b = fingerprints(sample_filing(seeded(2)));
    const auto shared = [](const std::vector<Fingerprint>& x, const std::vector<Fingerprint>& y) {
        std::size_t n = 0;
        for (const auto& p : x) {
            for (const auto& q : y) n += p.kind == q.kind && p.key == q.key ? 1U : 0U;
        }
        return n;
    };
    CHECK(shared(a, a) == a.size());
    CHECK(shared(a, b) == 1);  // both carry the same stand-in for an invoice's file
    CHECK_THAT(shared_with(a[0], "F-9").sentence.english(), Contains("F-9") && Contains("?"));
}

TEST_CASE("programs are refused with the path", "[review][constructed]") {
    const auto refused = [](const std::string& text) {
        try {
            read_rebate_program(text, "p.json");
            return std::string();
        } catch (const InputError& e) {
            return std::string(e.what());
        }
    };
    const std::string head = R"({"evenfall_rebate":1,"name":"n","title":"t","version":"1","source":"s","mark":"constructed","currency":"USD","budget":1,"payment":[],"rules":[)";
    CHECK(refused(head + "]}").empty());
    CHECK_THAT(refused(head + R"({"rule":"sektor","words":"w"}]})"), Contains("rules[0].rule") && Contains("sector"));
    CHECK_THAT(refused(head + R"({"rule":"sector","words":"w"}]})"), Contains("any_of"));
    CHECK_THAT(refused(head + R"({"rule":"area","words":"w","at_least":{"value":1,"unit":"acres"}}]})"), Contains("unit"));
    CHECK_THAT(refused(head + R"({"rule":"du_after","words":"w","at_least":0.7,"certainty":1.2}]})"), Contains("certainty"));
    CHECK_THAT(refused(head + R"({"rule":"cans","words":"w","at_least":20,"certainty":0.9}]})"), Contains("certainty"));
    CHECK_THAT(refused(head + R"({"rule":"wind","words":"w"}]})"), Contains("a limit"));
    CHECK_THAT(refused("{}"), Contains("name"));
    CHECK_THROWS_WITH(built_in_rebate("nothing"), Contains("rebate-sport-heads"));
    CHECK(built_in_rebate_names().size() == 3);
}
