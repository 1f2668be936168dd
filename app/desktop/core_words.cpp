// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/core_words.h"

#include "app/desktop/shown.h"
#include "core/calendar/date.h"
#include "core/input_error.h"
#include "core/sentence_error.h"

#include <QCoreApplication>
#include <string>

namespace evenfall::desktop {
namespace {

/// For lupdate: texts of the core that are fixed. Each is spelled as the core has it.
[[maybe_unused]] constexpr const char* known[] = {
    QT_TRANSLATE_NOOP("Core", "No reference ET for too many days: need and budget are not known."),
    QT_TRANSLATE_NOOP("Core", "Days without reference ET were filled with the mean of the month's other days."),
    QT_TRANSLATE_NOOP("Core", "On some days an input of the reference ET was replaced or refused."),
    QT_TRANSLATE_NOOP("Core", "Rain was not recorded for too many days: need is not known under this rain rule."),
    QT_TRANSLATE_NOOP("Core", "Days without a rain record were filled with the mean of the month's other days."),
    QT_TRANSLATE_NOOP("Core", "The weather record covers a part of the month; only those days are counted."),
    QT_TRANSLATE_NOOP("Core", "The meter readings cover a part of the month; only those days are counted."),
    QT_TRANSLATE_NOOP("Core", "The meter record has a gap; need and budget are scaled to the time that was metered."),
    QT_TRANSLATE_NOOP("Core", "No meter: use is not known."),
    QT_TRANSLATE_NOOP("Core", "No meter readings: use is not known."),
    QT_TRANSLATE_NOOP("Core", "A part of the volume comes from estimated readings or lies between readings outside the month."),
    QT_TRANSLATE_NOOP("Core", "The meter ran backward over the month: there is no account."),
    QT_TRANSLATE_NOOP("Core", "The submeters add up to more than the meter above them."),
    QT_TRANSLATE_NOOP("Core", "The meter serves several areas; its volume was split by area times coefficient."),
    QT_TRANSLATE_NOOP("Core", "The landscape coefficient was assumed."),
    QT_TRANSLATE_NOOP("Core", "No catch test: a planning value of the head type stands for the uniformity."),
    QT_TRANSLATE_NOOP("Core", "Neither a catch test nor a known head type is recorded."),
    QT_TRANSLATE_NOOP("Core", "The catch test was made after the month."),
    QT_TRANSLATE_NOOP("Core", "The off-target share is not known and was counted as 0."),
    QT_TRANSLATE_NOOP("Core", "The readings are too far apart to show a leak; it was counted as 0."),
    QT_TRANSLATE_NOOP("Core", "The leak found is larger than the volume and was cut to it."),
    QT_TRANSLATE_NOOP("Core", "The need contains the leaching requirement of salty water; rain that leaches is not counted against it, and by cans that water shows as drained."),
    QT_TRANSLATE_NOOP("Core", "Some areas have no account."),
    QT_TRANSLATE_NOOP("Core", "Some months have no account."),
    QT_TRANSLATE_NOOP("Core", "area"),
    QT_TRANSLATE_NOOP("Core", "meter"),
    QT_TRANSLATE_NOOP("Core", "weather"),
    QT_TRANSLATE_NOOP("Core", "used by the turf"),
    QT_TRANSLATE_NOOP("Core", "uneven application, unavoidable"),
    QT_TRANSLATE_NOOP("Core", "uneven application, avoidable"),
    QT_TRANSLATE_NOOP("Core", "off target"),
    QT_TRANSLATE_NOOP("Core", "leak"),
    QT_TRANSLATE_NOOP("Core", "over-scheduled"),
    QT_TRANSLATE_NOOP("Core", "short of the need"),
    QT_TRANSLATE_NOOP("Core", "California model landscape ordinance, 2009 text"),
    QT_TRANSLATE_NOOP("Core", "California model landscape ordinance, 2015 text, existing landscape"),
    QT_TRANSLATE_NOOP("Core", "California model landscape ordinance, 2015 text, non-residential"),
    QT_TRANSLATE_NOOP("Core", "California model landscape ordinance, 2015 text, residential"),
    QT_TRANSLATE_NOOP("Core", "General budget at a target uniformity"),
    QT_TRANSLATE_NOOP("Core", "Allowance of 80 % of reference ET, less effective rain"),
    QT_TRANSLATE_NOOP("Core", "Tolland Reach Water District, large turf allotment (invented)"),
    QT_TRANSLATE_NOOP("Core", "lateral"),
    QT_TRANSLATE_NOOP("Core", "centre pivot"),
    QT_TRANSLATE_NOOP("Core", "traveller"),
    QT_TRANSLATE_NOOP("Core", "solid-set grid"),
    QT_TRANSLATE_NOOP("Core", "irregular positions"),
    QT_TRANSLATE_NOOP("Core", "length of machine each can stands for"),
    QT_TRANSLATE_NOOP("Core", "distance from the pivot point"),
    QT_TRANSLATE_NOOP("Core", "ring area"),
    QT_TRANSLATE_NOOP("Core", "each strip across the lane the same area"),
    QT_TRANSLATE_NOOP("Core", "each can the same area"),
    QT_TRANSLATE_NOOP("Core", "each can the same area (positions not used)"),
    QT_TRANSLATE_NOOP("Core", "Voronoi share of the tested ground"),
    QT_TRANSLATE_NOOP("Core", "Christiansen coefficient"),
    QT_TRANSLATE_NOOP("Core", "Heermann-Hein coefficient"),
    QT_TRANSLATE_NOOP("Core", "BCa bootstrap"),
    QT_TRANSLATE_NOOP("Core", "percentile bootstrap"),
    QT_TRANSLATE_NOOP("Core", "BCa bootstrap, widened for few values"),
    QT_TRANSLATE_NOOP("Core", "no spread in the resamples"),
    QT_TRANSLATE_NOOP("Core", "week net x run-time multiplier / rate of the station; days by p x available water over ET of a day; cycles by allowable surface accumulation; whole minutes, up"),
    QT_TRANSLATE_NOOP("Core", "FAO-56 Eq. 82 and 83; trade formula for cycles (memory)"),
    QT_TRANSLATE_NOOP("Core", "no watering rule: every day is allowed and no window is kept"),
    QT_TRANSLATE_NOOP("Core", "no station"),
    QT_TRANSLATE_NOOP("Core", "no application rate: test it or enter its rate"),
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

QString error_words(const std::exception& error) {
    if (const auto* said = dynamic_cast<const SentenceError*>(&error)) return core_words(said->sentence());
    const auto* input = dynamic_cast<const InputError*>(&error);
    if (input == nullptr) return QString::fromUtf8(error.what());
    static constexpr std::size_t most = 20;
    QStringList lines;
    const auto& issues = input->issues();
    for (std::size_t i = 0; i < issues.size() && i < most; ++i) lines << core_words(issues[i].sentence());
    if (issues.size() > most) {
        lines << QCoreApplication::translate("Core", "and %1 more").arg(issues.size() - most);
    }
    return lines.join(QLatin1Char('\n'));
}

QString core_words(std::string_view english) {
    return QCoreApplication::translate("Core", std::string(english).c_str());
}

QString record_words(std::string_view record) {
    const std::size_t blank = record.find(' ');
    if (blank == std::string_view::npos) return core_words(record);
    return core_words(record.substr(0, blank)) + q(record.substr(blank));
}

QString dated_words(std::string_view sentence) {
    static constexpr std::size_t month = 7;  // 2025-01
    static constexpr std::string_view to = " to ";
    const std::size_t colon = sentence.find(": ");
    const std::string_view dates = sentence.substr(0, colon);
    if (colon == std::string_view::npos || !calendar::parse_month(dates.substr(0, month))) return core_words(sentence);
    QString words = q(dates);
    if (dates.size() == 2 * month + to.size() && dates.substr(month, to.size()) == to) {
        words = QCoreApplication::translate("Core", "%1 to %2").arg(q(dates.substr(0, month)), q(dates.substr(month + to.size())));
    }
    return words + QStringLiteral(": ") + core_words(sentence.substr(colon + 2));
}

}  // namespace evenfall::desktop
