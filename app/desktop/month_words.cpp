// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/month_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace evenfall::desktop {
namespace {

struct MonthWords {
    Q_DECLARE_TR_FUNCTIONS(MonthWords)
};

}  // namespace

QString month_name(calendar::Month month) {
    const QStringList names = MonthWords::tr("Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec").split(QLatin1Char(' '));
    return names.value(static_cast<int>(static_cast<unsigned>(month.month())) - 1);
}

QString month_title(calendar::Month month) {
    return month_name(month) + QLatin1Char(' ') + QString::number(static_cast<int>(month.year()));
}

}  // namespace evenfall::desktop
