// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/site_choice.h"

#include "app/desktop/session.h"
#include "app/desktop/shown.h"
#include "core/store/site_store.h"

#include <QComboBox>

namespace evenfall::desktop {

void fill_sites(QComboBox& box, Session& session) {
    const QVariant before = box.currentData();
    box.clear();
    if (session.has_book()) {
        for (const auto& site : store::sites(session.book())) {
            box.addItem(q(site.name) + QStringLiteral("  (") + q(site.code) + QLatin1Char(')'), q(site.code));
        }
    }
    const int at = box.findData(before);
    box.setCurrentIndex(at < 0 && box.count() > 0 ? 0 : at);
}

}  // namespace evenfall::desktop
