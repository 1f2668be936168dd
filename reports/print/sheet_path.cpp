// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/print/sheet_path.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <QRectF>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace evenfall::reports {
namespace {

class PathReader {
  public:
    explicit PathReader(const std::string& data) : data_(data) {}

    QPainterPath run() {
        while (at_ < data_.size()) {
            const char command = data_[at_++];
            switch (command) {
                case 'M': path_.moveTo(point()); break;
                case 'L': path_.lineTo(point()); break;
                case 'l': path_.lineTo(path_.currentPosition() + point()); break;
                case 'A': arc(); break;
                case 'Z': path_.closeSubpath(); break;
                case ' ': break;
                default: refuse();
            }
        }
        return path_;
    }

  private:
    [[noreturn]] void refuse() const {
        throw InputError(printable(data_.substr(at_ == 0 ? 0 : at_ - 1)), "path data that evenfall wrote");
    }

    double number() {
        while (at_ < data_.size() && data_[at_] == ' ') ++at_;
        const std::size_t end = std::min(data_.find_first_not_of("0123456789.-", at_), data_.size());
        const auto value = units::parse_number(data_.substr(at_, end - at_));
        if (!value) refuse();
        at_ = end;
        return *value;
    }

    QPointF point() {
        const double x = number();
        return {x, number()};
    }

    /// From end points to centre and angles: SVG 1.1, implementation note F.6.5, for a circle.
    void arc() {
        double r = number();
        static_cast<void>(number());  // the other radius, the same
        static_cast<void>(number());  // turned by: nothing to turn
        const bool large = number() != 0.0;
        const bool sweep = number() != 0.0;
        const QPointF from = path_.currentPosition();
        const QPointF to = point();
        const QPointF half = (to - from) / 2.0;
        const double reach = std::hypot(half.x(), half.y());
        if (reach == 0.0 || r <= 0.0) return;
        r = std::max(r, reach);  // rounding may leave the radius a hair too short
        const double up = std::sqrt(std::max(0.0, r * r - reach * reach)) / reach;
        const double side = large == sweep ? -1.0 : 1.0;
        const QPointF centre = from + half + side * up * QPointF(-half.y(), half.x());
        const auto angle = [&](const QPointF& p) {
            return -std::atan2(p.y() - centre.y(), p.x() - centre.x()) * 180.0 / std::numbers::pi;
        };
        double turn = angle(to) - angle(from);
        if (sweep && turn > 0.0) turn -= 360.0;
        if (!sweep && turn < 0.0) turn += 360.0;
        path_.arcTo(QRectF(centre.x() - r, centre.y() - r, 2.0 * r, 2.0 * r), angle(from), turn);
    }

    const std::string& data_;
    std::size_t at_ = 0;
    QPainterPath path_;
};

}  // namespace

QPainterPath sheet_path(const std::string& data) { return PathReader(data).run(); }

}  // namespace evenfall::reports
