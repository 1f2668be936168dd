// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/core_words.h"

#include "app/desktop/shown.h"
#include "app/workflow/error_sentence.h"

#include <QCoreApplication>
#include <string>

namespace evenfall::desktop {
namespace {

/// For lupdate: texts of the core that are fixed. Each is spelled as the core has it.
[[maybe_unused]] constexpr const char* known[] = {
    QT_TRANSLATE_NOOP("Core", "California model landscape ordinance, 2009 text"),
    QT_TRANSLATE_NOOP("Core", "California model landscape ordinance, 2015 text, existing landscape"),
    QT_TRANSLATE_NOOP("Core", "California model landscape ordinance, 2015 text, non-residential"),
    QT_TRANSLATE_NOOP("Core", "California model landscape ordinance, 2015 text, residential"),
    QT_TRANSLATE_NOOP("Core", "General budget at a target uniformity"),
    QT_TRANSLATE_NOOP("Core", "Allowance of 80 % of reference ET, less effective rain"),
    QT_TRANSLATE_NOOP("Core", "Tolland Reach Water District, large turf allotment (invented)"),
    QT_TRANSLATE_NOOP("Core", "Harrow County Irrigation Fund, half the cost of controllers (invented)"),
    QT_TRANSLATE_NOOP("Core", "Tolland Reach Water District, pay for water saved (invented)"),
    QT_TRANSLATE_NOOP("Core", "Tolland Reach Water District, even water on sports turf (invented)"),
    QT_TRANSLATE_NOOP("Core", "sod farms and campuses"),
    QT_TRANSLATE_NOOP("Core", "signed by the auditor"),
    QT_TRANSLATE_NOOP("Core", "two photos of the controllers in place"),
    QT_TRANSLATE_NOOP("Core", "an invoice"),
    QT_TRANSLATE_NOOP("Core", "a mean catch of 0.1 in or more in each test"),
    QT_TRANSLATE_NOOP("Core", "half of the invoices"),
    QT_TRANSLATE_NOOP("Core", "at least one acre of turf"),
    QT_TRANSLATE_NOOP("Core", "a turbine or magnetic meter"),
    QT_TRANSLATE_NOOP("Core", "water saved: 10 % or more, with a probability of 90 %"),
    QT_TRANSLATE_NOOP("Core", "claimed figures follow from the raw data"),
    QT_TRANSLATE_NOOP("Core", "water saved in the months after the work"),
    QT_TRANSLATE_NOOP("Core", "sports grounds, campuses and parks"),
    QT_TRANSLATE_NOOP("Core", "at least half an acre of turf"),
    QT_TRANSLATE_NOOP("Core", "an invoice for the devices"),
    QT_TRANSLATE_NOOP("Core", "the auditor's certification is valid on the day of each test"),
    QT_TRANSLATE_NOOP("Core", "a catch test before the work"),
    QT_TRANSLATE_NOOP("Core", "a catch test after the work"),
    QT_TRANSLATE_NOOP("Core", "at least 20 cans in each test"),
    QT_TRANSLATE_NOOP("Core", "wind of 5 mph or less in each test"),
    QT_TRANSLATE_NOOP("Core", "the test after the work is no older than 400 days"),
    QT_TRANSLATE_NOOP("Core", "DU of the low quarter of 0.70 or more after the work, with a probability of 80 %"),
    QT_TRANSLATE_NOOP("Core", "DU of the low quarter up by 0.05 or more"),
    QT_TRANSLATE_NOOP("Core", "nozzles"),
    QT_TRANSLATE_NOOP("Core", "pressure regulators"),
};

}  // namespace

QString core_words(Phrase phrase) {
    return phrase.form == nullptr ? QString() : QCoreApplication::translate(phrase.room, phrase.form);
}

QString core_words(const Sentence& sentence) {
    const auto& values = sentence.values();
    if (sentence.form().form == nullptr && values.empty()) return q(sentence.english());
    QStringList parts;
    for (const Sentence& value : values) parts << core_words(value);
    if (sentence.form().form == nullptr) return parts.join(q(sentence.between()));
    // Not by arg(): a value may itself contain "%1".
    const QString form = core_words(sentence.form());
    QString out;
    for (qsizetype i = 0; i < form.size(); ++i) {
        const int place = form[i] == QLatin1Char('%') && i + 1 < form.size() ? form[i + 1].digitValue() : -1;
        if (place >= 1 && place <= parts.size()) {
            out += parts[place - 1];
            ++i;
        } else {
            out += form[i];
        }
    }
    return out;
}

QString error_words(const std::exception& error) { return core_words(workflow::error_sentence(error)); }

QString core_words(std::string_view english) {
    return QCoreApplication::translate("Core", std::string(english).c_str());
}

}  // namespace evenfall::desktop
