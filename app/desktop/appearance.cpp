// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/appearance.h"

#include <QApplication>
#include <QPalette>
#include <QStyleFactory>
#include <algorithm>
#include <cmath>

namespace evenfall::desktop {
namespace {

Theme shown_theme = Theme::light;

const Look light_look{QColor(0xF6F4EF), QColor(0xFFFFFF), QColor(0x22282B), QColor(0x586268),
                      QColor(0xDCD8CE), QColor(0x0E6565), QColor(0xFFFFFF), QColor(0xA3341F)};
/// Surface, ink, faint and rule are those of the charts that lie on it.
Look make_dark_look() {
    const reports::Surround& s = reports::surround(reports::Medium::dark_screen);
    return {QColor(0x1B1F21), QColor(s.ground), QColor(s.text), QColor(s.faint),
            QColor(s.grid), QColor(0x72C9C2), QColor(0x10201F), QColor(0xF2A08C)};
}

QPalette palette_of(const Look& l) {
    QPalette p;
    p.setColor(QPalette::Window, l.paper);
    p.setColor(QPalette::WindowText, l.ink);
    p.setColor(QPalette::Base, l.surface);
    p.setColor(QPalette::AlternateBase, l.paper);
    p.setColor(QPalette::Text, l.ink);
    p.setColor(QPalette::Button, l.surface);
    p.setColor(QPalette::ButtonText, l.ink);
    p.setColor(QPalette::BrightText, l.warn);
    p.setColor(QPalette::Highlight, l.accent);
    p.setColor(QPalette::HighlightedText, l.on_accent);
    p.setColor(QPalette::ToolTipBase, l.surface);
    p.setColor(QPalette::ToolTipText, l.ink);
    p.setColor(QPalette::PlaceholderText, l.faint);
    p.setColor(QPalette::Link, l.accent);
    p.setColor(QPalette::Mid, l.rule);
    p.setColor(QPalette::Dark, l.rule);
    p.setColor(QPalette::Light, l.surface);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        QColor grey = l.faint;
        grey.setAlphaF(0.7F);
        p.setColor(QPalette::Disabled, role, grey);
    }
    return p;
}

QString sheet_of(const Look& l, Theme wanted) {
    return QStringLiteral(R"(
QToolTip { background: %surface; color: %ink; border: 1px solid %rule; padding: 4px; }
QFrame#rule { border: none; background: %rule; max-height: 1px; }
QFrame#card { background: %surface; border: 1px solid %rule; border-radius: 6px; }
QLabel#title { font-size: 20px; font-weight: 600; }
QLabel#heading { font-weight: 600; }
QLabel#faint { color: %faint; }
QLabel#warn { color: %warn; }
QLabel#banner { background: %accent; color: %on_accent; padding: 6px 16px; }
QListWidget#strip { background: %paper; border: none; border-left: 4px solid transparent; outline: 0; font-size: 14px; }
QListWidget#strip::item { padding: 9px 14px; margin: 1px 8px 1px 4px; border-radius: 5px; color: %ink; }
QListWidget#strip::item:selected { background: %accent; color: %on_accent; }
QListWidget#strip::item:selected:!active { background: %accent; color: %on_accent; }
QLineEdit, QComboBox, QDateEdit, QTimeEdit, QSpinBox, QPlainTextEdit, QDoubleSpinBox {
  background: %surface; color: %ink; border: 1px solid %rule; border-radius: 4px; padding: 3px 6px;
  selection-background-color: %accent; selection-color: %on_accent; min-height: 20px; }
QLineEdit:focus, QComboBox:focus, QDateEdit:focus, QSpinBox:focus, QPlainTextEdit:focus { border: 2px solid %accent; padding: 2px 5px; }
QLineEdit[bad="true"] { border: 2px solid %warn; }
QLineEdit:disabled, QComboBox:disabled, QSpinBox:disabled, QDoubleSpinBox:disabled, QTimeEdit:disabled, QPlainTextEdit:disabled { color: %faint; background: %paper; }
QComboBox { combobox-popup: 0; }
QComboBox::drop-down, QDateEdit::drop-down { border: none; width: 18px; }
QComboBox::down-arrow, QDateEdit::down-arrow { image: url(:/pictures/down-%tone.svg); width: 12px; height: 12px; }
QAbstractSpinBox::up-button, QAbstractSpinBox::down-button { border: none; background: transparent; width: 16px; }
QTimeEdit::up-arrow, QSpinBox::up-arrow, QDoubleSpinBox::up-arrow { image: url(:/pictures/up-%tone.svg); width: 10px; height: 10px; }
QTimeEdit::down-arrow, QSpinBox::down-arrow, QDoubleSpinBox::down-arrow { image: url(:/pictures/down-%tone.svg); width: 10px; height: 10px; }
QComboBox QAbstractItemView { background: %surface; color: %ink; border: 1px solid %rule; }
QPushButton { background: %surface; color: %ink; border: 1px solid %rule; border-radius: 4px;
  padding: 5px 12px; min-height: 20px; }
QPushButton:hover { border-color: %accent; }
QPushButton:focus { border: 2px solid %accent; padding: 4px 11px; }
QPushButton:checked { background: %accent; color: %on_accent; border-color: %accent; }
QPushButton:checked:focus { border: 2px solid %ink; }
QPushButton#main { background: %accent; color: %on_accent; border-color: %accent; }
QPushButton#main:focus { border: 2px solid %ink; }
QPushButton#main:disabled { color: %faint; background: %paper; border-color: %rule; }
QPushButton:disabled { color: %faint; background: %paper; border-color: %rule; }
QTableView, QTreeView, QListView { background: %surface; alternate-background-color: %paper;
  border: 1px solid %rule; gridline-color: %rule; selection-background-color: %accent;
  selection-color: %on_accent; }
QTableView:focus, QListView:focus { border: 1px solid %accent; }
QListWidget#strip:focus { border: none; border-left: 4px solid %accent; }
QTableView::item { border: none; padding: 2px 5px; }
QListView::item { padding: 3px 4px; }
QHeaderView#sorted::up-arrow, QHeaderView#sorted::down-arrow { subcontrol-position: top center; width: 8px; height: 8px; }
QHeaderView#sorted::up-arrow { image: url(:/pictures/up-%tone.svg); }
QHeaderView#sorted::down-arrow { image: url(:/pictures/down-%tone.svg); }
QTableCornerButton::section { background: %surface; border: none; border-bottom: 1px solid %rule; }
QHeaderView { background: %surface; border: none; }
QHeaderView::section { background: %surface; color: %faint; border: none;
  border-bottom: 1px solid %rule; padding: 5px 8px; }
QTabWidget::pane { border: none; border-top: 1px solid %rule; }
QTabBar::tab { padding: 6px 12px; color: %faint; border-bottom: 2px solid transparent; }
QTabBar::tab:selected { color: %ink; border-bottom: 2px solid %accent; }
QTabBar::tab:focus { color: %accent; }
QCheckBox::indicator { width: 14px; height: 14px; border: 1px solid %faint; border-radius: 3px; background: %surface; }
QCheckBox::indicator:checked { background: %accent; border-color: %accent; image: url(:/pictures/check-%tone.svg); }
QCheckBox:focus { color: %accent; }
QScrollArea { border: none; background: transparent; }
QMenuBar { background: %paper; color: %ink; }
QMenuBar::item:selected, QMenu::item:selected { background: %accent; color: %on_accent; }
QMenu { background: %surface; color: %ink; border: 1px solid %rule; }
QProgressBar { border: 1px solid %rule; border-radius: 4px; background: %surface; color: %ink;
  text-align: center; max-height: 16px; }
QProgressBar::chunk { background: %accent; }
QStatusBar { color: %faint; }
QStatusBar::item { border: none; }
QSplitter::handle { background: transparent; }
)")
        .replace(QStringLiteral("%tone"),
                 wanted == Theme::dark ? QStringLiteral("dark") : QStringLiteral("light"))
        .replace(QStringLiteral("%surface"), l.surface.name())
        .replace(QStringLiteral("%paper"), l.paper.name())
        .replace(QStringLiteral("%on_accent"), l.on_accent.name())
        .replace(QStringLiteral("%accent"), l.accent.name())
        .replace(QStringLiteral("%ink"), l.ink.name())
        .replace(QStringLiteral("%faint"), l.faint.name())
        .replace(QStringLiteral("%rule"), l.rule.name())
        .replace(QStringLiteral("%warn"), l.warn.name());
}

double linear(double channel) {
    return channel <= 0.03928 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& c) {
    return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

}  // namespace

const Look& look(Theme wanted) {
    static const Look dark_look = make_dark_look();
    return wanted == Theme::dark ? dark_look : light_look;
}
Theme theme() { return shown_theme; }
const Look& look() { return look(shown_theme); }

void apply_theme(QApplication& application, Theme wanted) {
    shown_theme = wanted;
    application.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    application.setPalette(palette_of(look()));
    application.setStyleSheet(sheet_of(look(), wanted));
}

reports::Medium medium(Theme theme) { return theme == Theme::dark ? reports::Medium::dark_screen : reports::Medium::paper; }

QColor depth_colour(double share, Theme theme) { return QColor::fromRgb(reports::depth_colour(share, medium(theme))); }

QColor text_on(const QColor& ground) {
    return QColor::fromRgb(reports::ink_on(static_cast<reports::Rgb>(ground.rgb() & 0xFFFFFFU)));
}

double contrast(const QColor& a, const QColor& b) {
    const double la = luminance(a);
    const double lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

}  // namespace evenfall::desktop
