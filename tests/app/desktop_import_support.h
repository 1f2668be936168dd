// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/import/import_outcome.h"
#include "app/desktop/import/import_page.h"
#include "core/store/meter_store.h"
#include "core/store/reading_pages.h"
#include "tests/app/desktop_support.h"

#include <QPushButton>
#include <QTableWidget>
#include <string>
#include <vector>

namespace evenfall::desktop::tests {

/// A book with one site and two meters, and the page on it. All values constructed.
struct Import {
    Import() {
        session.create_book(folder.filePath(QStringLiteral("a.evenfall")));
        page.resize(1094, 740);
        add(QStringLiteral("sites.csv"), "site,name,latitude,elevation_ft\nS,Site,38,100\n");
        add(QStringLiteral("meters.csv"), "meter,site,unit\nM-1,S,gal\nM-2,S,gal\n");
        run(false);
        while (page.shown()) button<QPushButton>(page, QStringLiteral("Take off the list"))->click();
    }
    void add(const QString& name, const std::string& text) { page.add_files({write_file(folder, name, text)}); }
    void run(bool dry) {
        QSignalSpy done(&page, &ImportPage::finished);
        page.run(dry);
        REQUIRE(done.wait(30000));
    }
    std::int64_t readings(const char* meter) {
        return store::count_readings_before(session.book(), meter, calendar::Instant{calendar::make_date(2100, 1, 1)});
    }
    std::vector<double> values(const char* meter) {
        std::vector<double> all;
        for (const auto& r : store::readings_from(session.book(), meter, {calendar::Instant{calendar::make_date(2000, 1, 1)}}, 1000)) {
            all.push_back(r.value);
        }
        return all;
    }
    QString outcome(int line, int column) { return page.outcome()->table()->item(line, column)->text(); }

    const QTemporaryDir folder;
    Session session;
    ImportPage page{session};
};

}  // namespace evenfall::desktop::tests
