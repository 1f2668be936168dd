// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/json_object.h"
#include "core/review/rebate_program.h"
#include "schemas/schemas.h"

#include <algorithm>
#include <array>
#include <utility>

namespace evenfall::review {
namespace {

enum class Dimension { none, area, speed, depth };

/// What a rule may and must say.
struct RuleForm {
    RuleKind kind;
    std::string_view name;
    bool least;
    bool most;
    bool choices;
    bool certainty;
    bool what;
    Dimension dimension;
};

constexpr std::array forms{
    RuleForm{RuleKind::sector, "sector", false, false, true, false, false, Dimension::none},
    RuleForm{RuleKind::area, "area", true, true, false, false, false, Dimension::area},
    RuleForm{RuleKind::meter_type, "meter_type", false, false, true, false, false, Dimension::none},
    RuleForm{RuleKind::evidence, "evidence", true, false, false, false, true, Dimension::none},
    RuleForm{RuleKind::invoice, "invoice", true, false, false, false, false, Dimension::none},
    RuleForm{RuleKind::signed_filing, "signed_filing", false, false, false, false, false, Dimension::none},
    RuleForm{RuleKind::certified, "certified", false, false, false, false, false, Dimension::none},
    RuleForm{RuleKind::test_before, "test_before", true, false, false, false, false, Dimension::none},
    RuleForm{RuleKind::test_after, "test_after", true, false, false, false, false, Dimension::none},
    RuleForm{RuleKind::cans, "cans", true, false, false, false, false, Dimension::none},
    RuleForm{RuleKind::wind, "wind", false, true, false, false, false, Dimension::speed},
    RuleForm{RuleKind::mean_catch, "mean_catch", true, false, false, false, false, Dimension::depth},
    RuleForm{RuleKind::audit_age, "audit_age", false, true, false, false, false, Dimension::none},
    RuleForm{RuleKind::du_after, "du_after", true, false, false, true, false, Dimension::none},
    RuleForm{RuleKind::du_improvement, "du_improvement", true, false, false, false, false, Dimension::none},
    RuleForm{RuleKind::savings_share, "savings_share", true, false, false, true, false, Dimension::none},
    RuleForm{RuleKind::claims, "claims", false, false, false, false, false, Dimension::none}};

/// A limit in SI; with a unit where the rule has a dimension, a plain number elsewhere.
std::optional<double> read_limit(const JsonObject& o, const char* name, Dimension dimension) {
    switch (dimension) {
        case Dimension::area:
            if (const auto m = o.maybe_measure<units::Area>(name)) return m->quantity().si();
            return std::nullopt;
        case Dimension::speed:
            if (const auto m = o.maybe_measure<units::Speed>(name)) return m->quantity().si();
            return std::nullopt;
        case Dimension::depth:
            if (const auto m = o.maybe_measure<units::Depth>(name)) return m->quantity().si();
            return std::nullopt;
        case Dimension::none: break;
    }
    return o.maybe_number(name, 0, 1e6);
}

ProgramRule read_rule(const JsonObject& o) {
    o.only({"rule", "words", "any_of", "what", "at_least", "at_most", "certainty"});
    ProgramRule rule;
    const std::string name = o.text("rule");
    const auto form = std::find_if(forms.begin(), forms.end(), [&](const RuleForm& f) { return f.name == name; });
    if (form == forms.end()) {
        std::string known;
        for (const RuleForm& f : forms) known += (known.empty() ? "" : ", ") + std::string(f.name);
        o.problem("rule", name, {phrase("review", "one of %1"), known});
        return rule;
    }
    rule.kind = form->kind;
    rule.words = o.text("words");
    rule.what = o.text_or_empty("what");
    rule.at_least = read_limit(o, "at_least", form->dimension);
    rule.at_most = read_limit(o, "at_most", form->dimension);
    rule.certainty = o.maybe_number("certainty", 0.5, 0.999);
    if (o.has("any_of")) {
        o.each_value("any_of", 50, [&](const nlohmann::json& value, const std::string&) {
            if (value.is_string()) rule.any_of.push_back(value.get<std::string>());
            else o.problem("any_of", value.type_name(), phrase("review", "texts"));
        });
    }
    const auto fits = [&](bool given, bool allowed, const char* member) {
        if (given && !allowed) o.problem(member, {phrase("review", "a member that the rule %1 does not have"), name}, phrase("review", "none"));
    };
    fits(rule.at_least.has_value(), form->least, "at_least");
    fits(rule.at_most.has_value(), form->most, "at_most");
    fits(rule.certainty.has_value(), form->certainty, "certainty");
    fits(!rule.any_of.empty(), form->choices, "any_of");
    fits(!rule.what.empty(), form->what, "what");
    if (form->choices && rule.any_of.empty()) o.problem("any_of", phrase("review", "nothing"), phrase("review", "the values that are accepted"));
    if (form->what && rule.what.empty()) o.problem("what", phrase("review", "nothing"), phrase("review", "the kind of attachment"));
    if ((form->least || form->most) && !rule.at_least && !rule.at_most) {
        o.problem(form->least ? "at_least" : "at_most", phrase("review", "nothing"), phrase("review", "a limit"));
    }
    return rule;
}

PaymentRule read_payment(const JsonObject& o) {
    PaymentRule p;
    const std::string line = o.text("line");
    p.words = o.text("words");
    if (line == "per_device") {
        o.only({"line", "words", "device", "amount", "most"});
        p.kind = PaymentKind::per_device;
        p.device = o.text("device");
        p.amount = o.number("amount", 0, 1e6);
        p.most = o.maybe_number("most", 0, 1e6);
    } else if (line == "share_of_cost") {
        o.only({"line", "words", "share", "most"});
        p.kind = PaymentKind::share_of_cost;
        p.amount = o.number("share", 0, 1);
        p.most = o.maybe_number("most", 0, 1e9);
    } else if (line == "per_volume") {
        o.only({"line", "words", "amount", "per"});
        p.kind = PaymentKind::per_volume;
        p.amount = o.number("amount", 0, 1e6);
        const auto per = o.maybe_measure<units::Volume>("per");
        if (!per || !(per->value > 0.0)) {
            o.problem("per", phrase("review", "nothing"), phrase("review", "a volume above zero"));
        } else {
            p.per = per->quantity();
            p.per_text = per->text();
        }
    } else {
        o.problem("line", line, {phrase("review", "one of %1"), "per_device, share_of_cost, per_volume"});
    }
    return p;
}

reference::Mark read_mark(const JsonObject& o) {
    using reference::Mark;
    const std::string text = o.text("mark");
    for (const Mark m : {Mark::seen, Mark::part, Mark::memory, Mark::derived, Mark::constructed, Mark::practice}) {
        if (reference::text_of(m) == text) return m;
    }
    o.problem("mark", text, {phrase("review", "one of %1"), "seen, part, memory, derived, constructed, practice"});
    return Mark::constructed;
}

void read_caps(const JsonObject& o, RebateProgram& p) {
    o.only({"application", "per_area", "share_of_cost"});
    p.cap_application = o.maybe_number("application", 0, 1e9);
    p.cap_share_of_cost = o.maybe_number("share_of_cost", 0, 1);
    if (const auto per = o.maybe_object("per_area")) {
        per->only({"amount", "area"});
        const double amount = per->number("amount", 0, 1e9);
        const auto area = per->maybe_measure<units::Area>("area");
        if (!area || !(area->value > 0.0)) {
            per->problem("area", phrase("review", "nothing"), phrase("review", "an area above zero"));
        } else {
            p.cap_per_area = amount / area->quantity().si();
            p.cap_area_amount = amount;
            p.cap_area_text = area->text();
        }
    }
}

}  // namespace

RebateProgram read_rebate_program(std::string_view json, const std::string& file) {
    if (json.size() > (std::size_t{1} << 20U)) {
        throw InputError({phrase("review", "a program file of %1 bytes, %2"), json.size(), file}, {phrase("review", "at most %1"), "1 MiB"});
    }
    const nlohmann::json parsed = parse_json(json, file, 6);
    Problems problems(file);
    const JsonObject o(parsed, "", problems);
    o.only({"evenfall_rebate", "name", "title", "version", "source", "mark", "currency", "rules", "payment", "caps", "budget"});
    RebateProgram p;
    if (o.number("evenfall_rebate", 0, 1000) != 1.0) o.problem("evenfall_rebate", phrase("review", "another form"), "1");
    p.name = o.text("name");
    p.title = o.text("title");
    p.version = o.text("version");
    p.source = o.text("source", 2000);
    p.mark = read_mark(o);
    p.currency = o.text("currency", 3);
    o.each("rules", 100, [&](const JsonObject& rule) { p.rules.push_back(read_rule(rule)); });
    o.each("payment", 50, [&](const JsonObject& line) { p.payment.push_back(read_payment(line)); });
    if (const auto caps = o.maybe_object("caps")) read_caps(*caps, p);
    p.budget = o.number("budget", 0, 1e12);
    problems.finish();
    return p;
}

std::vector<std::string> built_in_rebate_names() {
    std::vector<std::string> names;
    for (const std::string_view path : schemas::names("rebates/")) {
        std::string name(path);
        name.erase(0, name.rfind('/') + 1);
        names.push_back(name.substr(0, name.rfind('.')));
    }
    return names;
}

RebateProgram built_in_rebate(std::string_view name) {
    const auto names = built_in_rebate_names();
    if (std::find(names.begin(), names.end(), name) == names.end()) {
        std::string known;
        for (const std::string& each : names) known += (known.empty() ? "" : ", ") + each;
        throw InputError(name, {phrase("review", "a rebate program that comes with Evenfall, one of %1, or a file ending in .json"), known});
    }
    const std::string file = "rebates/" + std::string(name) + ".json";
    return read_rebate_program(schemas::text(file), file);
}

std::string_view text_of(RuleKind kind) {
    for (const RuleForm& form : forms) {
        if (form.kind == kind) return form.name;
    }
    return "";
}

}  // namespace evenfall::review
