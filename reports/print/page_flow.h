// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/look.h"
#include "reports/content/report.h"

#include <QFont>
#include <QPaintDevice>
#include <QRectF>
#include <QString>

#include <functional>
#include <vector>

class QPainter;

/// Sets a report on pages from top to bottom. The same code runs twice: first without a painter to
/// count the pages, then with one, so "page x of y" is right.
namespace evenfall::reports {

struct PageGeometry {
    double width = 612.0;   ///< points
    double height = 792.0;
    double margin = 50.0;
};

struct Bookmark {
    std::string title;
    int page = 0;      ///< from 0
    double top = 0.0;  ///< points from the top of the page
    int level = 0;     ///< 0 section, 1 table or chart
};

class PageFlow {
  public:
    /// @param painter    null to measure
    /// @param new_page   called before each page but the first
    /// @param pages      how many there will be; 0 while measuring
    PageFlow(QPaintDevice* device, QPainter* painter, PageGeometry geometry,
             std::function<void()> new_page, int pages);

    void report(const Report& report);

    int pages() const { return page_ + 1; }
    const std::vector<Bookmark>& bookmarks() const { return bookmarks_; }

  private:
    struct TableShape;

    double pt(double points) const { return points * scale_; }
    double left() const { return pt(geometry_.margin); }
    double width() const { return pt(geometry_.width - 2.0 * geometry_.margin); }
    double bottom() const { return pt(geometry_.height - geometry_.margin - 14.0); }

    void start_page();
    void page_break();
    /// Breaks the page unless that much room is left.
    void need(double height);
    void bookmark(const std::string& title, int level);

    /// Text in lines from `x`, over pages if it must; moves on.
    void text(const QString& text, const QFont& font, Rgb ink, double x, double width,
              double space_behind);
    double text_height(const QString& text, const QFont& font, double width) const;
    void heading(const std::string& title, double size, int level);
    void paragraph(const std::string& text);
    void bullet(const std::string& text);

    void title_page(const Report& report);
    void answer(const Answer& answer);
    void fix(const Fix& fix, int rank);
    void section(const Section& section, const Report& report);
    void chart(const Chart& chart, const Report& report);
    /// Points; bars from left to right need room for each category.
    static double chart_height(const Chart& chart, const Table* source);
    void notes(const Report& report);
    void signatures(const std::vector<Signature>& signatures);

    void table(const Table& table);
    TableShape shape_of(const Table& table) const;
    void table_block(const Table& table, const TableShape& shape,
                     const std::vector<std::size_t>& shown);
    double row_height(const std::vector<QString>& cells, const TableShape& shape,
                      const std::vector<std::size_t>& shown, const QFont& font) const;
    void table_row(const Table& table, const std::vector<QString>& cells, const TableShape& shape,
                   const std::vector<std::size_t>& shown, const QFont& font, Rgb fill,
                   double height);

    QPaintDevice* device_;
    QPainter* painter_;
    PageGeometry geometry_;
    std::function<void()> new_page_;
    int page_count_;
    double scale_;
    int page_ = 0;
    double y_ = 0.0;
    QString running_title_;
    std::vector<Bookmark> bookmarks_;
};

}  // namespace evenfall::reports
