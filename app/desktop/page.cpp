// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/page.h"

#include <QClipboard>
#include <QFrame>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace evenfall::desktop {

Page::Page(Session& session, const QString& title, const QString& sentence, QWidget* parent)
    : QWidget(parent), session_(session) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(20, 14, 20, 14);
    all->setSpacing(12);
    auto* top = new QHBoxLayout;
    auto* words = new QVBoxLayout;
    words->setSpacing(1);
    auto* head = new QLabel(title);
    head->setObjectName(QStringLiteral("title"));
    words->addWidget(head);
    sentence_ = faint(sentence);
    sentence_->setWordWrap(true);
    words->addWidget(sentence_);
    top->addLayout(words, 1);
    actions_ = new QHBoxLayout;
    actions_->setSpacing(gap);
    top->addLayout(actions_);
    all->addLayout(top);
    body_ = new QVBoxLayout;
    body_->setSpacing(12);
    all->addLayout(body_, 1);
    setAccessibleName(title);
}

QPushButton* Page::add_action(const QString& text, bool main) {
    auto* button = new QPushButton(text);
    if (main) button->setObjectName(QStringLiteral("main"));
    actions_->addWidget(button);
    return button;
}

void Page::set_sentence(const QString& sentence) { sentence_->setText(sentence); }

QFrame* card(QLayout* layout) {
    auto* frame = new QFrame;
    frame->setObjectName(QStringLiteral("card"));
    layout->setContentsMargins(14, 10, 14, 12);
    frame->setLayout(layout);
    return frame;
}

QLabel* heading(const QString& text) {
    auto* label = new QLabel(text);
    label->setObjectName(QStringLiteral("heading"));
    return label;
}

QLabel* faint(const QString& text) {
    auto* label = new QLabel(text);
    label->setObjectName(QStringLiteral("faint"));
    label->setTextFormat(Qt::PlainText);
    return label;
}

QWidget* labelled(const QString& text, QWidget* field) {
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    auto* label = faint(text);
    label->setBuddy(field);
    column->addWidget(label);
    column->addWidget(field);
    QString name = text;
    if (field->accessibleName().isEmpty()) field->setAccessibleName(name.remove(QLatin1Char('&')));
    return box;
}

void copy_text(const QString& text) { QGuiApplication::clipboard()->setText(text); }

}  // namespace evenfall::desktop
