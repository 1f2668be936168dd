// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/clock.h"

#include <QDateTime>

namespace evenfall::desktop {

std::string now_text() {
    return QDateTime::currentDateTimeUtc().toString(QStringLiteral("yyyy-MM-ddThh:mm:ssZ")).toStdString();
}

std::string user_text() {
    const QByteArray name = qgetenv("USER");
    return name.isEmpty() ? std::string("user") : name.toStdString();
}

}  // namespace evenfall::desktop
