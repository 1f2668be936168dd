// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/main_window.h"

#include "app/desktop/demo_book.h"
#include "app/desktop/task.h"

#include <QAction>
#include <QApplication>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QKeySequence>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QStandardPaths>

namespace evenfall::desktop {
namespace {

/// A name typed without one gets the ending by which books are found again.
QString with_ending(const QString& path) {
    return path.isEmpty() || !QFileInfo(path).suffix().isEmpty() ? path : path + QStringLiteral(".evenfall");
}

}  // namespace

void MainWindow::build_menus() {
    QMenu* file = menuBar()->addMenu(tr("&Book"));
    file->addAction(tr("&New book…"), QKeySequence::New, this, &MainWindow::new_book);
    file->addAction(tr("&Open a book…"), QKeySequence::Open, this, &MainWindow::choose_book);
    recent_ = file->addMenu(tr("&Recent books"));
    connect(recent_, &QMenu::aboutToShow, this, &MainWindow::fill_recent);
    file->addAction(tr("&Demo book…"), this, &MainWindow::make_demo_book);
    close_book_ = file->addAction(tr("&Close the book"), QKeySequence::Close, this, [this] {
        session_.close_book();
        show_page(QStringLiteral("start"));
    });
    file->addSeparator();
    file->addAction(tr("&Print preview…"), QKeySequence::Print, this, &MainWindow::print_preview);
    file->addSeparator();
    file->addAction(tr("&Quit"), QKeySequence::Quit, this, &QWidget::close);

    QMenu* edit = menuBar()->addMenu(tr("&Edit"));
    QAction* undo = undo_.createUndoAction(this, tr("Undo"));
    undo->setShortcut(QKeySequence::Undo);
    QAction* redo = undo_.createRedoAction(this, tr("Redo"));
    redo->setShortcut(QKeySequence::Redo);
    edit->addAction(undo);
    edit->addAction(redo);
    edit->addSeparator();
    edit->addAction(tr("&Copy what is chosen"), QKeySequence(QStringLiteral("Ctrl+Shift+C")), this, &MainWindow::copy);

    actions_ = menuBar()->addMenu(tr("Actio&ns"));
    fill_actions();

    QMenu* go = menuBar()->addMenu(tr("&Go to"));
    for (std::size_t i = 0; i < entries_.size(); ++i) {
        const int index = static_cast<int>(i);
        go->addAction(entries_[i].name, QKeySequence(QStringLiteral("Ctrl+%1").arg(index)), this,
                      [this, index] { show_entry(index); });
    }

    QMenu* view = menuBar()->addMenu(tr("&View"));
    view->addAction(tr("&US customary or metric"), QKeySequence(QStringLiteral("Ctrl+U")), this, [this] {
        session_.set_units(session_.units() == UnitsShown::us ? UnitsShown::metric : UnitsShown::us);
    });
    view->addAction(tr("&Light or dark"), QKeySequence(QStringLiteral("Ctrl+L")), this, [this] {
        session_.set_theme(session_.theme() == Theme::light ? Theme::dark : Theme::light);
    });
    view->addAction(tr("The &whole screen"), QKeySequence::FullScreen, this,
                    [this] { setWindowState(windowState() ^ Qt::WindowFullScreen); });

    QMenu* help = menuBar()->addMenu(tr("&Help"));
    help->addAction(tr("&About Evenfall"), this, [this] {
        QMessageBox::about(
            this, tr("About Evenfall"),
            tr("Evenfall %1\nRecord book and calculator for the water on large turf.\n\n"
               "Figures support judgement. They replace neither local codes, watering restrictions and "
               "permits nor licensed practice: mind backflow, reclaimed water, pressure, electricity, buried "
               "lines, machines and spray on roads.\n\nFree software under the GNU General Public License, "
               "version 3 or later.")
                .arg(QApplication::applicationVersion()));
    });
}

/// Only the actions of the page that is shown: an action in the menu answers to its keys everywhere.
void MainWindow::fill_actions() {
    if (!actions_) return;
    actions_->clear();
    if (page()) actions_->addActions(page()->actions());
    actions_->menuAction()->setVisible(!actions_->isEmpty());
}

void MainWindow::fill_recent() {
    recent_->clear();
    for (const QString& path : session_.recent_books()) {
        recent_->addAction(QDir::toNativeSeparators(path), this, [this, path] { open_book(path); });
    }
    if (recent_->isEmpty()) recent_->addAction(tr("none yet"))->setEnabled(false);
}

void MainWindow::choose_book() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Open a book"), QString(),
                                                      tr("Evenfall books (*.evenfall);;All files (*)"));
    if (!path.isEmpty()) open_book(path);
}

void MainWindow::new_book() {
    const QString path = with_ending(
        QFileDialog::getSaveFileName(this, tr("New book"), QString(), tr("Evenfall books (*.evenfall)")));
    if (path.isEmpty()) return;
    guarded([this, &path] {
        session_.create_book(path);
        show_page(QStringLiteral("import"));
    });
}

void MainWindow::make_demo_book() {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString path = with_ending(QFileDialog::getSaveFileName(this, tr("Where shall the demo book lie?"),
                                                                  folder + QStringLiteral("/demo.evenfall"),
                                                                  tr("Evenfall books (*.evenfall)")));
    if (path.isEmpty()) return;
    Task* task = session_.start(tr("Making the demo book"));
    if (!task) return;
    connect(task, &Task::finished, this, [this, path](const QString& error) {
        if (!error.isEmpty()) {
            QMessageBox::warning(this, tr("This did not work"), error);
            return;
        }
        open_book(path);
    });
    task->start([path](const TaskContext& context) { write_demo_book(path, context); });
}

void MainWindow::print_preview() {
    if (!page()) return;
    if (!page()->can_print()) {
        session_.say(tr("This page has nothing to print; reports are on the Reports page."));
        return;
    }
    QPrinter printer(QPrinter::HighResolution);
    QPrintPreviewDialog dialog(&printer, this);
    dialog.resize(size());
    connect(&dialog, &QPrintPreviewDialog::paintRequested, this, [this](QPrinter* p) { page()->print(*p); });
    dialog.exec();
}

void MainWindow::copy() {
    if (page() && page()->copy()) {
        session_.say(tr("Copied."));
    } else {
        session_.say(tr("Nothing is chosen that could be copied."));
    }
}

}  // namespace evenfall::desktop
