// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/background_question.h"
#include "app/desktop/page.h"
#include "app/desktop/reports_page/report_order.h"

#include <memory>
#include <optional>

class QCheckBox;
class QComboBox;
class QLabel;
class QListWidget;
class QPrintPreviewWidget;
class QPrinter;

namespace evenfall::desktop {

/// Choose a report, look at its pages, write its files.
/// Tests: tests/app/desktop_paths_test.cpp
class ReportsPage : public Page {
    Q_OBJECT

  public:
    explicit ReportsPage(Session& session, QWidget* parent = nullptr);
    ~ReportsPage() override;
    void book_changed() override;
    void units_changed() override { preview(); }
    bool can_print() const override { return report_.has_value(); }
    bool print(QPrinter& printer) override;

    void choose(ReportKind kind, const QString& site, const QString& test);
    /// Builds the report chosen and shows its pages.
    void preview();
    /// Writes the files of the formats ticked into the folder.
    void write(const QString& folder);
    const std::optional<reports::Report>& report() const { return report_; }
    const std::vector<std::filesystem::path>& written() const { return written_; }
    /// Which program draws PDF; empty: the one beside this program.
    void set_print_program(const std::filesystem::path& program) { print_program_ = program; }

  Q_SIGNALS:
    void previewed();
    void files_written();

  private:
    void kind_changed();
    void site_changed();
    ReportOrder order() const;
    void paint(QPrinter* printer) const;

    BackgroundQuestion asked_;
    QComboBox* kind_;
    QComboBox* site_;
    QComboBox* test_;
    QComboBox* from_;
    QComboBox* to_;
    QComboBox* program_;
    QComboBox* paper_;
    QWidget* test_box_;
    QWidget* season_box_;
    QCheckBox* xlsx_;
    QCheckBox* pdf_;
    QCheckBox* csv_;
    QLabel* state_;
    QListWidget* files_;
    QPushButton* write_;
    std::unique_ptr<QPrinter> printer_;
    QPrintPreviewWidget* pages_;
    std::optional<reports::Report> report_;
    std::vector<std::filesystem::path> written_;
    std::filesystem::path print_program_;
    bool filling_ = false;
};

}  // namespace evenfall::desktop
