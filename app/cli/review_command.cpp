// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "app/workflow/moment.h"
#include "app/workflow/review_batch.h"
#include "app/workflow/review_desk.h"
#include "core/sentences.h"
#include "core/units/number.h"

#include <ostream>

namespace evenfall::cli {
namespace {

using review::Review;
using units::format_fixed;
using units::format_grouped;
using workflow::Batch;
using workflow::BatchItem;

Json text_or_null(const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); }

Json savings_json(const Review& r) {
    if (!r.savings.savings) return {{"saved_gal", nullptr}, {"refused", english_of(r.savings.refused)}};
    const auto& s = *r.savings.savings;
    const double gallon = units::us_gallon.si();
    const auto& b = s.baseline;
    return {{"saved_gal", s.saved / gallon},
            {"saved_m3", s.saved},
            {"interval_gal", {s.low / gallon, s.high / gallon}},
            {"interval_m3", {s.low, s.high}},
            {"confidence", s.confidence},
            {"share", s.fraction},
            {"share_interval", {s.low / s.expected, s.high / s.expected}},
            {"significant", s.significant()},
            {"fractional_uncertainty", number_or_null(s.fractional_uncertainty)},
            {"cv_rmse", b.cv_rmse},
            {"cv_rmse_divisor", review::text_of(b.divisor)},
            {"nmbe", b.nmbe},
            {"r_squared", b.r_squared},
            {"autocorrelation", b.autocorrelation},
            {"baseline", review::text_of(b.form).english()},
            {"months_before", b.n},
            {"months_after", s.after_spells},
            {"method", s.method.english()},
            {"remarks", english_of(r.savings.remarks)},
            {"refused", Json::array()}};
}

Json review_json(const BatchItem& item) {
    if (!item.review) return {{"file", item.file}, {"refused", item.refused.english()}, {"decision", nullptr}};
    const Review& r = *item.review;
    Json claims = Json::array();
    for (const auto& c : r.claims) {
        const bool agrees = c.agreement == review::Agreement::agrees || c.agreement == review::Agreement::explained;
        claims.push_back({{"name", c.claim.name},
                          {"subject", text_or_null(c.claim.subject)},
                          {"unit", text_or_null(c.claim.unit)},
                          {"claimed", number_or_null(c.claimed)},
                          {"recomputed", number_or_null(c.recomputed)},
                          {"agrees", c.agreement == review::Agreement::cannot_tell ? Json(nullptr) : Json(agrees)},
                          {"agreement", review::text_of(c.agreement)},
                          {"why", c.why.english()},
                          {"evidence", c.evidence.english()},
                          {"method", c.method.english()}});
    }
    Json rules = Json::array();
    for (const auto& j : r.rules) {
        rules.push_back({{"rule", review::text_of(j.kind)}, {"words", j.words}, {"outcome", review::text_of(j.outcome)},
                         {"why", j.why.english()}, {"evidence", j.evidence.english()}});
    }
    Json asked = Json::array();
    for (const auto& q : r.questions) asked.push_back({{"key", q.key}, {"question", q.sentence.english()}, {"evidence", q.evidence.english()}});
    Json payment = nullptr;
    if (r.payment) {
        Json lines = Json::array();
        for (const auto& l : r.payment->lines) lines.push_back({{"line", l.words}, {"working", l.working.english()}, {"amount", l.amount}});
        payment = {{"lines", std::move(lines)}, {"total", r.payment->total}, {"currency", r.payment->currency}};
    }
    return {{"file", item.file},
            {"filing", r.filing},
            {"sha256", r.sha256},
            {"signed", r.is_signed},
            {"application", text_or_null(r.application)},
            {"applicant", text_or_null(r.applicant)},
            {"site", r.site},
            {"program", text_or_null(r.program)},
            {"claims", std::move(claims)},
            {"recomputes", r.recomputes()},
            {"rules", std::move(rules)},
            {"savings", savings_json(r)},
            {"questions", std::move(asked)},
            {"payment", std::move(payment)},
            {"missing", english_of(r.missing)},
            {"risk", r.risk()},
            {"decision", r.decision == review::Decision::none ? Json(nullptr) : Json(review::text_of(r.decision))},
            {"refused", nullptr}};
}

Json totals_json(const Batch& b) {
    return {{"filings", b.items.size()}, {"approve", b.approve}, {"decline", b.decline}, {"send_more", b.send_more},
            {"refused", b.refused}, {"money", b.money},
            {"currency", b.program ? Json(b.program->currency) : Json(nullptr)},
            {"budget_left", number_or_null(b.budget_left)},
            {"budget_left_after", b.budget_left ? Json(*b.budget_left - b.money) : Json(nullptr)}};
}

void print_one(std::ostream& out, const BatchItem& item) {
    if (!item.review) {
        out << item.file << "\n  refused: " << item.refused << "\n";
        return;
    }
    const Review& r = *item.review;
    out << item.file << "  filing " << printable(r.filing) << ", site " << printable(r.site) << (r.is_signed ? ", signed" : ", not signed")
        << "\n  SHA-256 " << r.sha256 << "\n";
    for (const auto& c : r.claims) {
        out << "  " << review::text_of(c.agreement) << ": " << printable(c.claim.name) << " " << printable(c.claim.subject) << " claimed "
            << printable(c.claim.text) << printable(c.claim.unit) << ", recomputed "
            << (c.recomputed ? format_fixed(*c.recomputed, 4) : std::string("not known")) << "; " << c.why << "\n";
    }
    if (r.savings.savings) {
        const auto& s = *r.savings.savings;
        out << "  savings " << format_grouped(s.saved / units::us_gallon.si(), 0) << " gal (" << format_grouped(s.saved, 0) << " m3), "
            << format_fixed(100.0 * s.fraction, 1) << " %, " << format_fixed(100.0 * s.confidence, 0) << " % interval "
            << format_fixed(100.0 * s.low / s.expected, 1) << " to " << format_fixed(100.0 * s.high / s.expected, 1) << " %\n    " << s.method << "\n";
    } else {
        for (const auto& why : r.savings.refused) out << "  no savings: " << why << "\n";
    }
    for (const auto& q : r.questions) out << "  question: " << q.sentence << " [" << q.evidence << "]\n";
    for (const auto& j : r.rules) out << "  " << review::text_of(j.outcome) << ": " << j.words << "; " << j.why << " [" << j.evidence << "]\n";
    if (r.payment) {
        for (const auto& l : r.payment->lines) out << "  " << l.words << ": " << l.working << " = " << format_grouped(l.amount, 2) << "\n";
        out << "  payment if approved: " << format_grouped(r.payment->total, 2) << " " << r.payment->currency << "\n";
    }
    if (r.decision != review::Decision::none) out << "  decision: " << review::text_of(r.decision) << "\n";
    for (const auto& m : r.missing) out << "  please send: " << m << "\n";
}

void print_table(std::ostream& out, const Batch& b) {
    out << "In order of review (risk points times money asked for)\n";
    for (const std::size_t i : b.order) {
        const BatchItem& item = b.items[i];
        out << "  " << item.file << "  ";
        if (!item.review) {
            out << "refused: " << item.refused << "\n";
            continue;
        }
        const Review& r = *item.review;
        out << (r.decision == review::Decision::none ? (r.recomputes() ? "recomputes" : "does not recompute") : std::string(review::text_of(r.decision)))
            << ", risk " << format_fixed(r.risk(), 0);
        if (r.payment) out << ", " << format_grouped(r.payment->total, 2) << " " << r.payment->currency;
        out << "\n";
    }
    out << b.items.size() << " filings: " << b.approve << " approve, " << b.decline << " decline, " << b.send_more << " send more, "
        << b.refused << " refused";
    if (b.program) out << "; " << format_grouped(b.money, 2) << " " << b.program->currency << " to approve";
    if (b.budget_left) out << ", " << format_grouped(*b.budget_left, 2) << " left before";
    out << "\n";
}

/// Memo and letter of each filing, named by its code.
std::vector<std::string> write_memos(const ReviewOptions& o, const Batch& b, const Streams& streams) {
    const workflow::ReviewPapers papers{
        o.out, o.formats, o.system == "metric" ? reports::UnitsShown::metric : reports::UnitsShown::us,
        workflow::present_moment(), "Evenfall " EVENFALL_VERSION,
        std::filesystem::path(streams.program_folder) / "evenfall-print"};
    std::vector<std::string> files;
    for (const BatchItem& item : b.items) {
        if (!item.review) continue;
        const std::string letter = review::letter(*item.review, b.program ? &*b.program : nullptr);
        for (const auto& f : workflow::write_review_papers(*item.review, letter, papers)) files.push_back(f.string());
    }
    return files;
}

int status_of(const Batch& b) {
    bool any = false;
    bool all_yes = true;
    for (const BatchItem& item : b.items) {
        if (!item.review) {
            all_yes = false;
            continue;
        }
        any = true;
        const auto decision = item.review->decision;
        all_yes = all_yes && item.review->recomputes() && (decision == review::Decision::approve || decision == review::Decision::none);
    }
    if (!any) return bad_input;
    return all_yes ? done : answer_no;
}

}  // namespace

int run(const ReviewOptions& o, Streams& streams) {
    workflow::ReviewOrder order;
    for (const std::string& file : o.files) order.files.emplace_back(file);
    order.program = o.program;
    order.together = o.together;
    order.threads = o.threads;
    std::optional<store::Book> book;
    if (!o.book.empty()) book.emplace(store::Book::open(o.book, store::Access::read_write));
    const auto progress = [&](std::size_t n) {
        if (streams.err_is_terminal && n % 50 == 0) streams.err << "\r" << n << " filings" << std::flush;
    };
    const Batch batch = workflow::review_batch(order, book ? &*book : nullptr, progress);
    if (streams.err_is_terminal && batch.items.size() >= 50) streams.err << '\n';
    if (book) workflow::store_batch(*book, batch, order, workflow::present_moment(), o.who.empty() ? workflow::present_user() : o.who);
    std::vector<std::string> files;
    if (!o.out.empty()) files = write_memos(o, batch, streams);
    if (batch.items.size() == 1) {
        const BatchItem& item = batch.items.front();
        if (!item.review) {
            streams.err << "evenfall: " << item.refused << '\n';
            return bad_input;
        }
        if (o.json) {
            Json json = review_json(item);
            json["files"] = files;
            streams.out << print(json);
        } else {
            print_one(streams.out, item);
        }
        return status_of(batch);
    }
    if (o.json) {
        Json filings = Json::array();
        for (const BatchItem& item : batch.items) filings.push_back(review_json(item));
        Json first = Json::array();
        for (const std::size_t i : batch.order) first.push_back(batch.items[i].file);
        streams.out << print(Json{{"filings", std::move(filings)}, {"order", std::move(first)}, {"totals", totals_json(batch)}, {"files", files}});
    } else {
        print_table(streams.out, batch);
    }
    return status_of(batch);
}

}  // namespace evenfall::cli
