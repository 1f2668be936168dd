// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/appearance.h"
#include "app/desktop/plan/audit_view.h"
#include "app/desktop/plan/plan_document.h"

#include <QGraphicsScene>
#include <QGraphicsView>
#include <vector>

class QGraphicsPixmapItem;

/// The drawing: turf and paving, the predicted rate under the heads, the heads with their arcs.
/// Scene units are the plan's; north is up. Lines have an edge of the ground's colour, so that they are
/// seen on every depth of water.
/// Tests: tests/app/desktop_plan_test.cpp
namespace evenfall::desktop {

class HeadItem;

/// How lines and marks are drawn.
struct Inking {
    Theme theme;
    double dots;  ///< of the device for one of the screen, for marks that keep their size
    double unit;  ///< units of the plan for one dot of the screen; 0: lines keep their width in every zoom
};

class PlanScene : public QGraphicsScene {
    Q_OBJECT

  public:
    PlanScene(PlanDocument& document, const Inking& inking, QObject* parent = nullptr);
    /// The scene clears itself in its base class and says that the choice changed: nobody is here then.
    ~PlanScene() override;
    void set_field_shown(bool shown);
    void set_dry_shown(bool shown);
    /// Cans of a catch test over the drawing, each with its difference; none when empty.
    void set_cans(std::vector<CanMark> cans);
    /// Draws everything anew; what was chosen stays chosen.
    void restyle(Theme theme);
    /// As on paper, whatever the window looks like, at the top of `target`.
    /// @param dots  of the painter's device for one of the screen
    void draw_on_paper(QPainter& painter, const QRectF& target, const QRectF& part, double dots);
    /// The chosen head, or -1.
    int chosen() const;
    void choose(int index);
    PlanDocument& document() { return document_; }

  Q_SIGNALS:
    void head_chosen(int index);

  private:
    void rebuild();
    void paint_field();
    void add_cans();

    PlanDocument& document_;
    Inking inking_;
    QGraphicsPixmapItem* field_ = nullptr;
    std::vector<HeadItem*> heads_;
    std::vector<CanMark> cans_;
    std::vector<QGraphicsItem*> can_items_;
    bool field_shown_ = true;
    bool dry_shown_ = false;
};

/// Wheel and + − zoom, drag on empty ground or space with it pans, 0 fits; arrows move the chosen
/// head by one unit (with Shift a tenth), Delete removes it.
class PlanView : public QGraphicsView {
    Q_OBJECT

  public:
    explicit PlanView(PlanScene& scene, QWidget* parent = nullptr);
    void fit();
    /// What fit() shows; the whole drawing when null.
    void set_part(const QRectF& part);

  protected:
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    PlanScene& scene_;
    QRectF part_;
    bool zoomed_ = false;
};

}  // namespace evenfall::desktop
