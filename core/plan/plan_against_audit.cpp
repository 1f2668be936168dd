// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/plan_against_audit.h"

#include "core/audit/sample.h"
#include "core/input_error.h"
#include "core/plan/matched.h"
#include "core/plan/nnls.h"
#include "core/plan/outline.h"
#include "core/plan/sprinkler.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace evenfall::plan {
namespace {

constexpr std::size_t most_fitted = 3000;
/// Cans that the design leaves drier than this share of the mean say little about outputs.
constexpr double dry_share = 0.25;

/// One head's share of one can.
struct Reach {
    std::size_t can;
    double depth;  ///< mm at the designed output
};

double root_mean_square(const std::vector<double>& values) {
    double sum = 0.0;
    for (double v : values) sum += v * v;
    return values.empty() ? 0.0 : std::sqrt(sum / static_cast<double>(values.size()));
}

std::optional<units::LowQuarterDu> du_of(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    const double quarter = static_cast<double>(values.size()) / 4.0;
    const auto whole = static_cast<std::size_t>(quarter);
    double low = 0.0, all = 0.0;
    for (double v : values) all += v;
    for (std::size_t i = 0; i < whole; ++i) low += values[i];
    if (whole < values.size()) low += (quarter - static_cast<double>(whole)) * values[whole];
    if (!(all > 0.0)) return std::nullopt;
    return units::LowQuarterDu::of(std::clamp(low / quarter / (all / static_cast<double>(values.size())), 0.0, 1.0));
}

class Comparer {
  public:
    Comparer(const Plan& plan, const audit::CatchTest& test) : plan_(plan), test_(test), all_(sprinklers_of(plan)) {}

    PlanAgainstAudit run() {
        check_test();
        read_cans();
        predict();
        estimate_common_output();
        choose_heads();
        fit();
        judge();
        sum_up();
        return std::move(out_);
    }

  private:
    void check_test() const {
        auto faults = audit::check(test_);
        if (!faults.empty()) throw InputError(std::move(faults));
        if (test_.layout != audit::Layout::grid && test_.layout != audit::Layout::irregular) {
            throw InputError(phrase("plan", "a pivot or traveller test"), phrase("plan", "a test of standing cans with x and y"));
        }
        if (!test_.minutes) throw InputError(phrase("plan", "a test without run time"), phrase("plan", "the minutes it ran"));
    }

    void read_cans() {
        const double length = plan_.units.length.unit.si();
        const Ground ground(plan_.turf);
        std::size_t off = 0;
        for (const audit::Catch& c : test_.catches) {
            if (!c.excluded.empty()) continue;
            if (!c.x || !c.y) throw InputError({phrase("plan", "can %1"), printable(c.can)}, phrase("plan", "its position, x and y"));
            CanComparison can;
            can.can = c.can;
            const double to_plan = test_.position_unit.unit.si() / length;
            can.place = {*c.x * to_plan, *c.y * to_plan};
            can.on_turf = ground.covers(can.place, 0.5 / length);
            if (!can.on_turf) ++off;
            can.caught = audit::depth_of(test_, c);
            out_.cans.push_back(can);
        }
        if (2 * off > out_.cans.size()) {
            throw InputError({phrase("plan", "%1 of %2 cans outside the outline"), off, out_.cans.size()},
                             phrase("plan", "positions measured in the frame of the plan"));
        }
        if (off > 0) out_.notes.push_back({phrase("plan", "%1 cans stand outside the outline"), off});
    }

    void predict() {
        const double length = plan_.units.length.unit.si();
        const double seconds = *test_.minutes * 60.0;
        reach_.resize(all_.heads.size());
        predicted_.assign(out_.cans.size(), 0.0);
        for (std::size_t j = 0; j < all_.heads.size(); ++j) {
            const Sprinkler& s = all_.heads[j];
            for (std::size_t i = 0; i < out_.cans.size(); ++i) {
                const Point at{out_.cans[i].place.x * length, out_.cans[i].place.y * length};
                if (std::abs(at.x - s.x) > s.radius || std::abs(at.y - s.y) > s.radius) continue;
                const double depth = rate_at(all_, s, at, {}) * seconds * 1000.0;
                if (!(depth > 0.0)) continue;
                reach_[j].push_back({i, depth});
                predicted_[i] += depth;
                ++out_.cans[i].heads;
            }
        }
        std::size_t wet = 0;
        for (double p : predicted_) {
            if (p > 0.0) ++wet;
            mean_predicted_ += p / static_cast<double>(predicted_.size());
        }
        if (wet < 4) throw InputError({phrase("plan", "%1 cans that the plan wets"), wet}, phrase("plan", "at least four"));
        for (const CanComparison& c : out_.cans) {
            caught_.push_back(c.caught.in(units::millimetre));
            mean_caught_ += caught_.back() / static_cast<double>(out_.cans.size());
        }
    }

    void estimate_common_output() {
        std::vector<double> ratios;
        for (std::size_t i = 0; i < caught_.size(); ++i) {
            if (predicted_[i] >= dry_share * mean_predicted_) ratios.push_back(caught_[i] / predicted_[i]);
        }
        const auto middle = ratios.begin() + static_cast<std::ptrdiff_t>(ratios.size() / 2);
        std::nth_element(ratios.begin(), middle, ratios.end());
        out_.common_output = *middle;
        // When half the cans are dry their median says nothing; their mean still does.
        if (!(out_.common_output > 0.0)) out_.common_output = mean_caught_ / mean_predicted_;
        if (std::abs(out_.common_output - 1.0) > 0.15) {
            out_.notes.push_back({phrase("plan", "all heads together deliver %1 % of the design: look at pressure, run time, evaporation and the unit of the catches first"),
                                  units::format_fixed(100.0 * out_.common_output, 0)});
        }
    }

    void choose_heads() {
        for (std::size_t j = 0; j < reach_.size(); ++j) {
            double most = 0.0;
            for (const Reach& r : reach_[j]) most = std::max(most, r.depth);
            // A head that only grazes a can cannot be judged by it.
            if (most > 0.02 * mean_predicted_) fitted_.push_back(j);
        }
        if (fitted_.size() > most_fitted) {
            throw InputError({phrase("plan", "%1 heads in reach of the cans"), fitted_.size()},
                             {phrase("plan", "at most %1: compare the part that was tested"), most_fitted});
        }
    }

    double can_error(std::size_t i) const {
        return scatter_ * std::max(out_.common_output * predicted_[i], dry_share * mean_caught_);
    }

    /// Normal equations of the fit, once the errors of the cans are known.
    void build() {
        const std::size_t n = fitted_.size();
        const double width = out_.common_output / 2.0;
        std::vector<std::vector<std::pair<std::size_t, double>>> by_can(out_.cans.size());
        for (std::size_t k = 0; k < n; ++k) {
            for (const Reach& r : reach_[fitted_[k]]) by_can[r.can].emplace_back(k, r.depth);
        }
        g_.assign(n * n, 0.0);
        b_.assign(n, 0.0);
        for (std::size_t i = 0; i < by_can.size(); ++i) {
            const double weight = 1.0 / (can_error(i) * can_error(i));
            for (const auto& [k, dk] : by_can[i]) {
                b_[k] += weight * dk * caught_[i];
                for (const auto& [l, dl] : by_can[i]) g_[k * n + l] += weight * dk * dl;
            }
        }
        for (std::size_t k = 0; k < n; ++k) {
            g_[k * n + k] += 1.0 / (width * width);
            b_[k] += out_.common_output / (width * width);
        }
    }

    void refit() {
        build();
        outputs_ = nonnegative_least_squares(g_, b_);
        fitted_depth_.assign(out_.cans.size(), 0.0);
        for (std::size_t k = 0; k < fitted_.size(); ++k) {
            for (const Reach& r : reach_[fitted_[k]]) fitted_depth_[r.can] += outputs_[k] * r.depth;
        }
    }

    void fit() {
        const double least = plan_limit("can_scatter");
        scatter_ = least;
        // Twice: the scatter found by the first fit weighs the cans in the second.
        for (int round = 0; round < 2; ++round) {
            refit();
            const std::vector<double> cover = inverse_of(g_, fitted_.size());
            const double width = out_.common_output / 2.0;
            double told = 0.0;  // unknowns that the cans decide, the others being held by the prior
            for (std::size_t k = 0; k < fitted_.size(); ++k) {
                told += 1.0 - cover[k * fitted_.size() + k] / (width * width);
            }
            double chi = 0.0;
            for (std::size_t i = 0; i < caught_.size(); ++i) {
                const double z = (caught_[i] - fitted_depth_[i]) / can_error(i);
                chi += z * z;
            }
            const double left = std::max(1.0, static_cast<double>(caught_.size()) - told);
            out_.scatter = scatter_ * std::sqrt(chi / left);
            scatter_ = std::max(least, out_.scatter);
        }
        refit();
        cover_ = inverse_of(g_, fitted_.size());
    }

    void judge() {
        const double weak = plan_limit("weak_output") * out_.common_output;
        const double strong = plan_limit("strong_output") * out_.common_output;
        const double z = plan_limit("surest_z");
        const double blurred = plan_limit("blurred_error") * out_.common_output;
        for (const Head& h : plan_.heads) {
            HeadOutput head;
            head.head = h.id;
            head.output = out_.common_output;
            head.error = out_.common_output / 2.0;
            out_.heads.push_back(head);
        }
        const std::size_t n = fitted_.size();
        for (std::size_t k = 0; k < n; ++k) {
            HeadOutput& head = out_.heads[fitted_[k]];
            head.output = outputs_[k];
            head.error = std::sqrt(cover_[k * n + k]);
            if (head.output + z * head.error < weak) head.verdict = Verdict::weak;
            else if (head.output - z * head.error > strong) head.verdict = Verdict::strong;
            else if (head.error <= blurred && head.output >= weak && head.output <= strong) head.verdict = Verdict::as_designed;
        }
        for (std::size_t j = 0; j < out_.heads.size(); ++j) out_.heads[j].cans = reach_[j].size();
        for (std::size_t k = 0; k < n; ++k) explain(k);
        for (HeadOutput& head : out_.heads) {
            if (head.evidence.empty()) {
                head.evidence = head.cans == 0 ? phrase("plan", "no can stands in its reach")
                                               : phrase("plan", "the cans in its reach stand at its rim and catch almost nothing of it");
            }
        }
    }

    /// The sentence of one fitted head.
    void explain(std::size_t k) {
        HeadOutput& head = out_.heads[fitted_[k]];
        const std::string output = units::format_fixed(100.0 * head.output, 0);
        const std::string error = units::format_fixed(100.0 * head.error, 0);
        const Sentence found = head.cans == 1
                                   ? Sentence(phrase("plan", "%1 % of its design, give or take %2, from %3 can"), output, error, head.cans)
                                   : Sentence(phrase("plan", "%1 % of its design, give or take %2, from %3 cans"), output, error, head.cans);
        if (head.verdict != Verdict::cannot_tell) {
            const Reach* nearest = nullptr;
            for (const Reach& r : reach_[fitted_[k]]) {
                if (!nearest || r.depth > nearest->depth) nearest = &r;
            }
            const CanComparison& can = out_.cans[nearest->can];
            head.evidence = {phrase("plan", "%1; can %2, which it should feed most, caught %3 mm where the design gives %4"), found,
                             printable(can.can), units::format_fixed(caught_[nearest->can], 1), units::format_fixed(predicted_[nearest->can], 1)};
            return;
        }
        const std::size_t n = fitted_.size();
        std::size_t partner = n;
        double closest = 0.5;
        for (std::size_t l = 0; l < n; ++l) {
            if (l == k) continue;
            const double together = -cover_[k * n + l] / std::sqrt(cover_[k * n + k] * cover_[l * n + l]);
            if (together > closest) {
                closest = together;
                partner = l;
            }
        }
        std::vector<Sentence> said{found};
        if (partner < n) {
            said.push_back({phrase("plan", "the cans cannot tell it from head %1"), printable(plan_.heads[fitted_[partner]].id)});
        } else {
            said.emplace_back(phrase("plan", "too few cans, or cans that scatter too much, for a verdict"));
        }
        const double share = head.output / out_.common_output;
        if (share < plan_limit("weak_output")) said.emplace_back(phrase("plan", "it may be weak"));
        else if (share > plan_limit("strong_output")) said.emplace_back(phrase("plan", "it may be strong"));
        head.evidence = Sentence::joined(std::move(said), "; ");
    }

    void sum_up() {
        std::vector<double> before, after;
        for (std::size_t i = 0; i < out_.cans.size(); ++i) {
            out_.cans[i].predicted = predicted_[i] * units::millimetre;
            out_.cans[i].fitted = fitted_depth_[i] * units::millimetre;
            before.push_back(caught_[i] - out_.common_output * predicted_[i]);
            after.push_back(caught_[i] - fitted_depth_[i]);
        }
        out_.difference_before = root_mean_square(before) * units::millimetre;
        out_.difference_after = root_mean_square(after) * units::millimetre;
        out_.mean_caught = mean_caught_ * units::millimetre;
        out_.mean_predicted = mean_predicted_ * units::millimetre;
        out_.du_caught = du_of(caught_);
        out_.du_predicted = du_of(predicted_);
        out_.method = phrase("plan", "non-negative least squares for the output of each head, drawn to the common output");
        out_.convention = phrase("plan", "low quarter is exactly a quarter of the cans; limits for weak and strong from plan_limits.csv");
        out_.source = phrase("plan", "Lawson & Hanson 1974 for the fit; derived for its errors");
        for (const Sentence& a : all_.assumed) out_.notes.push_back(a);
    }

    const Plan& plan_;
    const audit::CatchTest& test_;
    Sprinklers all_;
    PlanAgainstAudit out_;
    std::vector<std::vector<Reach>> reach_;  ///< by head
    std::vector<double> predicted_, caught_, fitted_depth_;  ///< mm, by can
    double mean_predicted_ = 0.0, mean_caught_ = 0.0;
    double scatter_ = 0.0;
    std::vector<std::size_t> fitted_;        ///< heads in the fit
    std::vector<double> g_, b_, outputs_, cover_;
};

}  // namespace

std::string text_of(Verdict verdict) {
    switch (verdict) {
        case Verdict::as_designed: return "as designed";
        case Verdict::weak: return "weak";
        case Verdict::strong: return "strong";
        case Verdict::cannot_tell: return "cannot tell";
    }
    return "";
}

PlanAgainstAudit plan_against_audit(const Plan& plan, const audit::CatchTest& test) { return Comparer(plan, test).run(); }

}  // namespace evenfall::plan
