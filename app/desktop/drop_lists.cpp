// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/drop_lists.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QEvent>
#include <QScreen>

namespace evenfall::desktop {
namespace {

constexpr int margin = 24;

}  // namespace

bool DropLists::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::Show) return false;
    auto* view = qobject_cast<QAbstractItemView*>(watched);
    if (view == nullptr || view->parentWidget() == nullptr) return false;
    const auto* box = qobject_cast<QComboBox*>(view->parentWidget()->parentWidget());
    if (box == nullptr) return false;
    const int words = view->sizeHintForColumn(box->modelColumn()) + margin;
    view->setMinimumWidth(qMin(words, view->screen()->availableGeometry().width()));
    return false;
}

}  // namespace evenfall::desktop
