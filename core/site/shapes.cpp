// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/site/shapes.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <GeographicLib/Geodesic.hpp>
#include <GeographicLib/PolygonArea.hpp>

#include <cmath>
#include <numbers>
#include <numeric>

namespace evenfall::site {
namespace {

struct Words {
    std::string name;
    std::vector<double> numbers;
    bool colon_after_first = false;
};

/// "offsets 10: 0 12 15" as a name and numbers.
Words words_of(std::string_view shape) {
    Words words;
    std::size_t i = 0;
    while (i < shape.size()) {
        i = shape.find_first_not_of(" \t", i);
        if (i == std::string_view::npos) break;
        std::size_t end = shape.find_first_of(" \t", i);
        if (end == std::string_view::npos) end = shape.size();
        std::string_view word = shape.substr(i, end - i);
        i = end;
        if (words.name.empty()) {
            words.name = word;
            continue;
        }
        if (words.numbers.empty() && word.ends_with(':')) {
            words.colon_after_first = true;
            word.remove_suffix(1);
        }
        const auto value = units::parse_number(word);
        if (!value) throw InputError(word, {phrase("site", "a length as a number in the shape \"%1\""), shape});
        words.numbers.push_back(*value);
    }
    return words;
}

[[noreturn]] void no_shape(std::string_view shape, const Sentence& expected) { throw InputError(shape, expected); }

double triangle(std::string_view shape, double a, double b, double c) {
    const double s = (a + b + c) / 2;
    const double square = s * (s - a) * (s - b) * (s - c);
    if (!(square > 0)) no_shape(shape, phrase("site", "three sides that make a triangle"));
    return std::sqrt(square);
}

double offsets(const std::vector<double>& numbers) {
    const double spacing = numbers.front();
    const double sum = std::accumulate(numbers.begin() + 1, numbers.end(), 0.0);
    return spacing * (sum - (numbers[1] + numbers.back()) / 2);
}

/// Area of one shape in square units.
double one_shape(std::string_view shape) {
    const Words w = words_of(shape);
    const auto need = [&](std::size_t count, Phrase form) {
        if (w.numbers.size() != count || w.colon_after_first) no_shape(shape, form);
        for (double v : w.numbers) {
            if (!(v > 0)) no_shape(shape, phrase("site", "lengths above zero"));
        }
    };
    if (w.name == "rectangle") {
        need(2, phrase("site", "rectangle and two sides: rectangle 120 45"));
        return w.numbers[0] * w.numbers[1];
    }
    if (w.name == "triangle") {
        need(3, phrase("site", "triangle and three sides: triangle 30 40 50"));
        return triangle(shape, w.numbers[0], w.numbers[1], w.numbers[2]);
    }
    if (w.name == "circle") {
        need(1, phrase("site", "circle and its radius: circle 12"));
        return std::numbers::pi * w.numbers[0] * w.numbers[0];
    }
    if (w.name == "trapezoid") {
        need(3, phrase("site", "trapezoid, its parallel sides and their distance: trapezoid 30 20 15"));
        return (w.numbers[0] + w.numbers[1]) / 2 * w.numbers[2];
    }
    if (w.name == "offsets") {
        const Phrase form =
            phrase("site", "offsets, their spacing and at least two of them: offsets 10: 0 12 15 9 0");
        if (!w.colon_after_first || w.numbers.size() < 3 || !(w.numbers[0] > 0)) no_shape(shape, form);
        for (double v : w.numbers) {
            if (v < 0) no_shape(shape, phrase("site", "offsets of zero or more, on one side of the baseline"));
        }
        return offsets(w.numbers);
    }
    no_shape(w.name, phrase("site", "rectangle, triangle, circle, trapezoid or offsets"));
}

template <class RingArea>
double area_of(const std::vector<Polygon>& outline, RingArea ring_area) {
    double sum = 0.0;
    for (const Polygon& p : outline) {
        for (std::size_t i = 0; i < p.size(); ++i) {
            Ring ring = p[i];
            if (ring.size() > 1 && ring.front() == ring.back()) ring.pop_back();
            if (ring.size() < 3) {
                throw InputError({phrase("site", "%1 corners"), ring.size()},
                                 phrase("site", "a ring of at least three corners"));
            }
            const double area = std::abs(ring_area(ring));
            sum += i == 0 ? area : -area;
        }
    }
    return sum;
}

}  // namespace

units::Area area_of_shapes(std::string_view text, units::Length unit) {
    double sum = 0.0;
    double sign = 1.0;
    std::size_t begin = 0;
    while (true) {
        // A sign stands between blanks, so that it is none of a number.
        std::size_t end = std::string_view::npos;
        char next = 0;
        for (std::size_t i = begin; i + 2 < text.size(); ++i) {
            if (text[i] == ' ' && (text[i + 1] == '+' || text[i + 1] == '-') && text[i + 2] == ' ') {
                end = i;
                next = text[i + 1];
                break;
            }
        }
        const std::string_view shape =
            text.substr(begin, end == std::string_view::npos ? end : end - begin);
        sum += sign * one_shape(shape);
        if (end == std::string_view::npos) break;
        sign = next == '+' ? 1.0 : -1.0;
        begin = end + 3;
    }
    if (!(sum > 0)) throw InputError(text, phrase("site", "shapes that leave an area above zero"));
    return sum * (unit * unit);
}

units::Area area_on_ellipsoid(const std::vector<Polygon>& outline) {
    const double m2 = area_of(outline, [](const Ring& ring) {
        GeographicLib::PolygonArea polygon(GeographicLib::Geodesic::WGS84());
        for (const Point& p : ring) {
            if (!(std::abs(p[1]) <= 90) || !(std::abs(p[0]) <= 540)) {
                throw InputError(units::format_shortest(p[0]) + ", " + units::format_shortest(p[1]),
                                 phrase("site", "longitude and latitude in degrees"));
            }
            polygon.AddPoint(p[1], p[0]);
        }
        double perimeter = 0.0;
        double area = 0.0;
        polygon.Compute(false, true, perimeter, area);
        return area;
    });
    return units::Area::from_si(m2);
}

units::Area area_on_plane(const std::vector<Polygon>& outline, units::Length unit) {
    const double square = area_of(outline, [](const Ring& ring) {
        // From the first corner, so that large map coordinates do not cost digits.
        double twice = 0.0;
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const Point& a = ring[i];
            const Point& b = ring[(i + 1) % ring.size()];
            twice += (a[0] - ring[0][0]) * (b[1] - ring[0][1]) - (b[0] - ring[0][0]) * (a[1] - ring[0][1]);
        }
        return twice / 2;
    });
    return square * (unit * unit);
}

}  // namespace evenfall::site
