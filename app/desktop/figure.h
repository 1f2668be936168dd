// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QString>
#include <QStringList>
#include <vector>

class QGridLayout;

/// A figure that can say how it came about. Figures come ready from the core; what is held here
/// is only how they are printed and explained.
/// Tests: tests/app/desktop_field_sheet_test.cpp
namespace evenfall::desktop {

struct Explanation {
    QString formula;
    QStringList inputs;  ///< "mean of the cans: 12.4 mm, from the field sheet"
    QString method;
    QString convention;  ///< empty when there is no choice
    QString source;
    bool assumed = false;
};

struct Figure {
    QString key;    ///< stable name, for tests and for keeping cards in place
    QString name;
    QString value;
    Explanation why;
};

/// Name above, value below; a click, Return or Space opens the explanation.
class FigureCard : public QAbstractButton {
    Q_OBJECT

  public:
    explicit FigureCard(QWidget* parent = nullptr);
    void set_figure(const Figure& figure);
    const Figure& figure() const { return figure_; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    Figure figure_;
};

/// Cards in columns; keeps the widgets when only values change, so a keystroke stays cheap.
class FigureGrid : public QWidget {
    Q_OBJECT

  public:
    explicit FigureGrid(int columns, QWidget* parent = nullptr);
    void set_figures(const std::vector<Figure>& figures);
    /// The card of that key, or null.
    FigureCard* card(const QString& key) const;

  private:
    int columns_;
    QGridLayout* layout_;
    std::vector<FigureCard*> cards_;
};

/// Opens the explanation of a figure beside `anchor`; Escape closes it.
void show_explanation(QWidget* anchor, const Figure& figure);
/// The explanation as plain text, as copied to the clipboard.
QString explanation_text(const Figure& figure);

}  // namespace evenfall::desktop
