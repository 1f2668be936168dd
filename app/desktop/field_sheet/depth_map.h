// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/appearance.h"
#include "app/desktop/field_sheet/field_sheet.h"
#include "app/desktop/shown.h"

#include <QWidget>
#include <vector>

/// The catches as a map: a square per can, coloured by depth on the sand-to-blue scale, its number
/// printed in it; cans among the driest quarter carry a bar below the number. A legend says what
/// the colours mean. Nothing is computed here: depths come from the core.
/// Tests: tests/app/desktop_field_sheet_test.cpp
namespace evenfall::desktop {

class DepthMap : public QWidget {
    Q_OBJECT

  public:
    explicit DepthMap(FieldSheet& sheet, QWidget* parent = nullptr);
    void set_units(UnitsShown units);
    /// The map alone, on any painter; for the clipboard and for print in Theme::light.
    /// @param scale  dots of the painter's device for one of the screen
    void draw(QPainter& painter, const QRectF& target, Theme theme, double scale = 1.0) const;
    QSize sizeHint() const override { return {420, 300}; }
    QSize minimumSizeHint() const override { return {240, 160}; }

  Q_SIGNALS:
    void can_clicked(std::size_t index);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

  private:
    struct Square {
        std::size_t can;
        QRectF place;                 ///< in units of one can spacing, from the top left
        std::optional<double> depth;  ///< in the unit shown
        bool low = false;
    };
    void rebuild();
    int decimals() const { return units_ == UnitsShown::us ? 2 : 1; }
    void draw_square(QPainter& painter, const QRectF& place, const Square& square, Theme theme) const;
    /// The scale from dry to the deepest catch, and what the bar means.
    void draw_legend(QPainter& painter, const QRectF& area, Theme theme) const;
    QRectF scaled(const Square& square, const QRectF& area) const;

    FieldSheet& sheet_;
    UnitsShown units_ = UnitsShown::us;
    std::vector<Square> squares_;
    double deepest_ = 0.0;
};

}  // namespace evenfall::desktop
