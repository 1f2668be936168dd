// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/print/house_font.h"

#include <QFontInfo>

#include <stdexcept>

namespace evenfall::reports {

namespace {
constexpr const char* family = "DejaVu Sans";
}

QFont house_font(double points, bool bold) {
    QFont font{QString::fromLatin1(family)};
    font.setPointSizeF(points);
    font.setBold(bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    // Any letter spacing turns ligatures off: "first" must be found by a search for "first", not
    // stand there with one sign for "fi". A hundredth of a percent moves no letter visibly.
    font.setLetterSpacing(QFont::PercentageSpacing, 100.01);
    return font;
}

void need_house_font() {
    for (const bool bold : {false, true}) {
        const QFontInfo info(house_font(9.0, bold));
        if (info.family() != QLatin1String(family)) {
            throw std::runtime_error(
                "the font DejaVu Sans is not installed (found \"" + info.family().toStdString() +
                "\" instead); on Debian it comes with the package fonts-dejavu-core");
        }
    }
}

}  // namespace evenfall::reports
