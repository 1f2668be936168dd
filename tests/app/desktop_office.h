// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/figure_table.h"
#include "app/desktop/main_window.h"
#include "app/desktop/review/review_page.h"
#include "tests/app/desktop_support.h"
#include "tests/app/review_samples.h"

/// An officer's window with an empty book, off screen.
namespace evenfall::desktop::tests {

struct Office {
    Office() {
        session.create_book(q((folder / "office.evenfall").string()));
        window.show_page(QStringLiteral("review"));
        window.show();
        page = qobject_cast<ReviewPage*>(window.page());
        REQUIRE(page);
    }
    void add(const QStringList& files) {
        page->add_filings(files);
        REQUIRE(wait_for_work(session));
        // The queue is worked out after that.
        REQUIRE(QTest::qWaitFor([this] { return !page->queue().empty() && page->queue().front().review.has_value(); }, 60000));
    }
    evenfall::tests::TemporaryFolder folder;
    Session session;
    MainWindow window{session};
    ReviewPage* page = nullptr;
};

inline QString cell_of(const FigureTable* table, int row, int column) { return table->item(row, column)->text(); }

}  // namespace evenfall::desktop::tests
