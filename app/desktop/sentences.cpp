// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/sentences.h"

#include <QListWidget>
#include <QStyledItemDelegate>

namespace evenfall::desktop {
namespace {

// Padding of the style sheet and the style's own margin, with a little to spare.
constexpr int room_beside = 8;
constexpr int room_above = 4;

class WholeSentences : public QStyledItemDelegate {
  public:
    explicit WholeSentences(QListWidget* list) : QStyledItemDelegate(list), list_(list) {}
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        // A little narrower than what is painted on, so that a line too many is the worst.
        const int width = list_->viewport()->width() - 2 * (room_beside + list_->spacing());
        const QRect room(0, 0, qMax(40, width), 100000);
        const QRect text = option.fontMetrics.boundingRect(room, Qt::TextWordWrap, index.data().toString());
        return {qMax(40, width), text.height() + 2 * room_above};
    }

  private:
    QListWidget* list_;
};

}  // namespace

void show_whole_sentences(QListWidget* list) {
    list->setWordWrap(true);
    list->setTextElideMode(Qt::ElideNone);
    list->setResizeMode(QListView::Adjust);
    list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list->setItemDelegate(new WholeSentences(list));
}

}  // namespace evenfall::desktop
