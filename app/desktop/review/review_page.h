// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/page.h"
#include "app/desktop/review/queue_panel.h"
#include "app/workflow/applications.h"

#include <QTimer>
#include <optional>
#include <vector>

class QFrame;

namespace evenfall::desktop {

class ApplicationDialog;
class CasePanel;
class DecisionBox;
class EvidencePanel;
class FigureTable;

/// The officer's desk: the queue, the case, and the evidence beside it.
/// Tests: tests/app/desktop_review_test.cpp, tests/app/desktop_desk_test.cpp
class ReviewPage : public Page {
    Q_OBJECT

  public:
    explicit ReviewPage(Session& session, QWidget* parent = nullptr);
    void book_changed() override;
    void theme_changed() override { show_queue(); }
    bool copy() override;
    bool can_print() const override { return shown_case().has_value(); }
    bool print(QPrinter& printer) override;

    /// Brings filings in, judged by the program chosen.
    void add_filings(const QStringList& files);
    /// A program from a file; false, and a word about it, when it cannot be read.
    bool add_program(const QString& file) { return queue_panel_->add_program(file); }
    void show_application(const QString& code) { show_named({false, utf8(code)}); }
    /// A filing that belongs to no application.
    void show_filing(const QString& sha256) { show_named({true, utf8(sha256)}); }
    /// Opens an application by hand, for the waiting filing that is shown or for paper. The dialog is shown
    /// and belongs to the page; null when the book cannot be written.
    ApplicationDialog* open_by_hand(bool for_filing);
    /// Memo and letter of the case shown.
    void write_papers(const QString& folder, const std::vector<std::string>& formats);
    /// Which program draws PDF; empty: the one beside this program.
    void set_print_program(const std::filesystem::path& program) { print_program_ = program; }

    const std::vector<workflow::ReviewedCase>& queue() const { return queue_; }
    /// Filings that belong to no application.
    const std::vector<workflow::WaitingFiling>& waiting() const { return waiting_; }
    const std::optional<workflow::ReviewedCase>& shown_case() const;
    CasePanel& case_panel() const { return *case_panel_; }
    EvidencePanel& evidence_panel() const { return *evidence_panel_; }
    DecisionBox* decision() const;
    FigureTable* table(const QString& name) const;  ///< queue, claims, rules, questions, payment, history, filings
    QString state() const { return queue_panel_->said(); }
    QString letter() const;
    /// The raw data beside the chosen row, or not.
    void show_evidence(bool shown);

  Q_SIGNALS:
    /// The queue has been worked out and put in order.
    void queue_ready();
    void filings_added();
    void papers_written();

  protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void build_actions();
    void reload();
    void work_out();
    void show_queue();
    void show_named(const CaseName& name);
    std::optional<CaseName> shown_name() const;
    bool shown_stands(const CaseName& name) const;
    void evidence_changed();
    void share_room();

    QPushButton* add_;
    QPushButton* open_;
    QPushButton* papers_;
    QueuePanel* queue_panel_;
    CasePanel* case_panel_;
    EvidencePanel* evidence_panel_;
    QFrame* queue_card_;
    QFrame* evidence_card_;
    QTimer retry_;
    std::vector<workflow::ReviewedCase> queue_;
    std::vector<workflow::WaitingFiling> waiting_;
    std::filesystem::path print_program_;
    bool worked_out_ = true;
    bool evidence_asked_ = false;  ///< somebody has said whether it is to be shown
};

}  // namespace evenfall::desktop
