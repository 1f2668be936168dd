// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/field_sheet/sheet_journal.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::desktop;

namespace {

SheetData sheet_with(int cans) {
    SheetData sheet = empty_sheet(calendar::make_date(2025, 5, 14));
    for (int i = 0; i < cans; ++i) sheet.cans[static_cast<std::size_t>(i)].reading = 10.0 + i;
    return sheet;
}

}  // namespace

TEST_CASE("entries survive without any goodbye", "[desktop][constructed]") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("book.evenfall-entries"));
    {
        SheetJournal journal(path);
        REQUIRE(journal.claim());
        for (int n = 1; n <= 5; ++n) REQUIRE(journal.write(sheet_with(n)));
    }
    const auto back = SheetJournal(path).recover();
    REQUIRE(back);
    CHECK(back->cans == sheet_with(5).cans);
    CHECK(back->throat_area == "16.61 in2");
}

TEST_CASE("a journal cut at any byte gives the last whole entry", "[desktop][constructed]") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("entries"));
    qint64 first = 0;
    {
        SheetJournal journal(path);
        REQUIRE(journal.write(sheet_with(1)));
        first = QFile(path).size();
        REQUIRE(journal.write(sheet_with(2)));
    }
    QFile whole(path);
    REQUIRE(whole.open(QIODevice::ReadOnly));
    const QByteArray bytes = whole.readAll();
    whole.close();
    for (qint64 length = first; length <= bytes.size(); length += 7) {
        CAPTURE(length);
        QFile cut(path);
        REQUIRE(cut.open(QIODevice::WriteOnly | QIODevice::Truncate));
        cut.write(bytes.left(length));
        cut.close();
        const auto back = SheetJournal(path).recover();
        REQUIRE(back);
        CHECK(back->cans == sheet_with(length == bytes.size() ? 2 : 1).cans);
    }
}

TEST_CASE("writing goes on after a cut line, and a long journal is started anew", "[desktop][constructed]") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("entries"));
    {
        QFile torn(path);
        REQUIRE(torn.open(QIODevice::WriteOnly));
        torn.write("0123abcd {\"evenfall_sheet\":1,");
    }
    SheetJournal journal(path);
    CHECK(!journal.recover());
    for (int n = 0; n < 700; ++n) REQUIRE(journal.write(sheet_with(1 + n % 24)));
    CHECK(QFile(path).size() < (1 << 20) + 8192);
    const auto back = journal.recover();
    REQUIRE(back);
    CHECK(back->cans == sheet_with(1 + 699 % 24).cans);
    journal.clear();
    CHECK(!QFile::exists(path));
}

TEST_CASE("two windows do not share a journal; a folder that cannot be written says so",
          "[desktop][constructed]") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("entries"));
    SheetJournal first(path);
    SheetJournal second(path);
    CHECK(first.claim());
    CHECK(!second.claim());
    SheetJournal nowhere(folder.filePath(QStringLiteral("missing/folder/entries")));
    CHECK(!nowhere.write(sheet_with(1)));
    CHECK(!nowhere.error().isEmpty());
}
