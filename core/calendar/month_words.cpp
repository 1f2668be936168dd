// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/month_words.h"

#include <array>

namespace evenfall::calendar {

Phrase month_name(Month month) {
    static constexpr std::array names{
        phrase("calendar", "January"),   phrase("calendar", "February"), phrase("calendar", "March"),
        phrase("calendar", "April"),     phrase("calendar", "May"),      phrase("calendar", "June"),
        phrase("calendar", "July"),      phrase("calendar", "August"),   phrase("calendar", "September"),
        phrase("calendar", "October"),   phrase("calendar", "November"), phrase("calendar", "December")};
    return names.at(static_cast<unsigned>(month.month()) - 1U);
}

Sentence month_words(Month month) {
    static constexpr std::array names{
        phrase("calendar", "Jan"), phrase("calendar", "Feb"), phrase("calendar", "Mar"), phrase("calendar", "Apr"),
        phrase("calendar", "May"), phrase("calendar", "Jun"), phrase("calendar", "Jul"), phrase("calendar", "Aug"),
        phrase("calendar", "Sep"), phrase("calendar", "Oct"), phrase("calendar", "Nov"), phrase("calendar", "Dec")};
    return {phrase("calendar", "%1 %2"), names.at(static_cast<unsigned>(month.month()) - 1U),
            static_cast<int>(month.year())};
}

}  // namespace evenfall::calendar
