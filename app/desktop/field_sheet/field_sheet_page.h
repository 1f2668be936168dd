// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/field_sheet/field_sheet.h"
#include "app/desktop/page.h"

#include <QHash>
#include <functional>

class QComboBox;
class QDateEdit;
class QDoubleSpinBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;
class QTabWidget;

namespace evenfall::desktop {

class CanGrid;
class DepthMap;
class FigureGrid;
class SheetModel;

/// Catch entry: the cans as they stand, what was measured beside them, figures and map live.
/// Tests: tests/app/desktop_field_sheet_test.cpp
class FieldSheetPage : public Page {
    Q_OBJECT

  public:
    explicit FieldSheetPage(Session& session, QWidget* parent = nullptr);

    QUndoStack* undo_stack() override;
    void units_changed() override;
    void book_changed() override;
    bool copy() override;
    bool can_print() const override;
    bool print(QPrinter& printer) override;
    CanGrid* grid() const { return grid_; }
    FigureGrid* figures() const { return figures_; }
    DepthMap* map() const { return map_; }
    /// A test of the book.
    void show_test(const std::string& code);

  private:
    QWidget* make_head();
    QWidget* make_shape_row();
    QWidget* make_right();
    void show_head();
    void show_results();
    void change_layout(audit::Layout layout);
    void apply_shape();
    void open_test();
    void new_test();
    void save();
    /// False, with the reason told, when the book has another sheet of that code.
    bool store_test(const audit::CatchTest& test);
    /// Asks where entries would be lost.
    bool may_give_up_entries(const QString& title);
    QLineEdit* text_field(const QString& name, std::string SheetData::* field, const QString& hint);

    FieldSheet& sheet_;
    SheetModel* model_;
    CanGrid* grid_ = nullptr;
    DepthMap* map_ = nullptr;
    FigureGrid* figures_ = nullptr;
    QLabel* problem_ = nullptr;
    QLabel* progress_ = nullptr;
    QComboBox* area_ = nullptr;
    QComboBox* layout_ = nullptr;
    QComboBox* unit_ = nullptr;
    QComboBox* rule_ = nullptr;
    QComboBox* walk_ = nullptr;
    QComboBox* position_unit_ = nullptr;
    QDateEdit* date_ = nullptr;
    QSpinBox* rows_ = nullptr;
    QSpinBox* columns_ = nullptr;
    QDoubleSpinBox* spacing_ = nullptr;
    QLineEdit* lane_ = nullptr;
    QLabel* lane_label_ = nullptr;
    QTabWidget* tabs_ = nullptr;
    QPushButton* save_ = nullptr;
    QLineEdit* code_ = nullptr;
    QHash<QLineEdit*, std::string SheetData::*> fields_;
    bool showing_ = false;
};

}  // namespace evenfall::desktop
