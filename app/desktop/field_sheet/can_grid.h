// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>

/// The table of cans. Typing a digit starts a reading; Return and Enter store it and go to the
/// next can of the walk, Shift with them goes back; arrows store it and move over the ground.
/// Ctrl+E leaves a can out with a reason, Delete empties it.
/// Tests: tests/app/desktop_field_sheet_test.cpp
namespace evenfall::desktop {

class SheetModel;

class CanGrid : public QTableView {
    Q_OBJECT

  public:
    explicit CanGrid(SheetModel& model, QWidget* parent = nullptr);

    /// Asks for the reason and leaves the current can out, or counts it again.
    void exclude_current();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

  private:
    void walk(int steps);
    SheetModel& model_;
};

}  // namespace evenfall::desktop
