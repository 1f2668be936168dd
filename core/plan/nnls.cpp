// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/nnls.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace evenfall::plan {
namespace {

using Matrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;
using Vector = Eigen::VectorXd;

Eigen::Map<const Matrix> mapped(const std::vector<double>& g, std::size_t n) {
    if (g.size() != n * n) throw std::logic_error("a matrix of another size");
    const auto size = static_cast<Eigen::Index>(n);
    return {g.data(), size, size};
}

class ActiveSet {
  public:
    ActiveSet(Eigen::Map<const Matrix> g, const Vector& b)
        : g_(g), b_(b), s_(Vector::Zero(b.size())), free_(static_cast<std::size_t>(b.size()), 0),
          // Gradients below this are rounding, not a direction to go.
          tolerance_(1e-12 * std::max(1.0, b.cwiseAbs().maxCoeff()) * static_cast<double>(b.size())) {}

    Vector run() {
        const Eigen::Index most = 10 * b_.size() + 10;
        for (Eigen::Index step = 0; step < most; ++step) {
            const Vector gradient = b_ - g_ * s_;
            Eigen::Index best = -1;
            for (Eigen::Index i = 0; i < b_.size(); ++i) {
                if (is_free(i) || gradient[i] <= tolerance_) continue;
                if (best < 0 || gradient[i] > gradient[best]) best = i;
            }
            if (best < 0) return s_;
            set_free(best, true);
            settle();
        }
        return s_;
    }

  private:
    bool is_free(Eigen::Index i) const { return free_[static_cast<std::size_t>(i)] != 0; }
    void set_free(Eigen::Index i, bool on) { free_[static_cast<std::size_t>(i)] = on ? 1 : 0; }

    /// Solves for the free unknowns; those that would turn negative are held at zero one by one.
    void settle() {
        for (;;) {
            std::vector<Eigen::Index> at;
            for (Eigen::Index i = 0; i < b_.size(); ++i) {
                if (is_free(i)) at.push_back(i);
            }
            const Matrix part = g_(at, at);
            const Eigen::LLT<Matrix> factor(part);
            if (factor.info() != Eigen::Success) throw std::logic_error("a matrix that is not positive definite");
            const Vector wanted = factor.solve(Vector(b_(at)));
            double step = 1.0;
            for (std::size_t k = 0; k < at.size(); ++k) {
                const double now = s_[at[k]];
                const double then = wanted[static_cast<Eigen::Index>(k)];
                if (then <= 0.0) step = std::min(step, now / (now - then));
            }
            bool held = false;
            for (std::size_t k = 0; k < at.size(); ++k) {
                const double then = wanted[static_cast<Eigen::Index>(k)];
                double& now = s_[at[k]];
                now += step * (then - now);
                if (then <= 0.0 && now <= 1e-14) {
                    now = 0.0;
                    set_free(at[k], false);
                    held = true;
                }
            }
            if (!held) return;
        }
    }

    Eigen::Map<const Matrix> g_;
    const Vector& b_;
    Vector s_;
    std::vector<char> free_;
    double tolerance_;
};

}  // namespace

std::vector<double> nonnegative_least_squares(const std::vector<double>& g, const std::vector<double>& b) {
    if (b.empty()) return {};
    const Vector right = Eigen::Map<const Vector>(b.data(), static_cast<Eigen::Index>(b.size()));
    const Vector s = ActiveSet(mapped(g, b.size()), right).run();
    return {s.data(), s.data() + s.size()};
}

std::vector<double> inverse_of(const std::vector<double>& g, std::size_t n) {
    const Eigen::LLT<Matrix> factor{Matrix(mapped(g, n))};
    if (factor.info() != Eigen::Success) throw std::logic_error("a matrix that is not positive definite");
    const auto size = static_cast<Eigen::Index>(n);
    const Matrix inverse = factor.solve(Matrix::Identity(size, size));
    return {inverse.data(), inverse.data() + inverse.size()};
}

}  // namespace evenfall::plan
