// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>
#include <stdexcept>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

/// What the core says to people, kept so that a window can say it in another language.
///
///   phrase("plan", "more than %1 heads")   a form of words: the room that says it and the English,
///                                          with places %1 to %9 for values. Both are literals, so
///                                          that the tool that gathers the strings of the windows
///                                          finds them in the source.
///   Sentence                               a form with its values, or words that are the same in
///                                          every language (a name, a number, a text of the user's)
///
/// Core, command line and reports use english(); app/desktop/core_words.h gives the language shown.
/// Tests: tests/units/sentence_test.cpp, tests/app/desktop_strings_test.cpp
namespace evenfall {

struct Phrase {
    const char* room = nullptr;
    const char* form = nullptr;  ///< static

    constexpr std::string_view english() const { return form == nullptr ? std::string_view{} : form; }
};

constexpr Phrase phrase(const char* room, const char* form) { return {room, form}; }

/// How many values a form asks for.
constexpr std::size_t places_in(std::string_view form) {
    std::size_t most = 0;
    for (std::size_t i = 0; i + 1 < form.size(); ++i) {
        if (form[i] != '%' || form[i + 1] < '1' || form[i + 1] > '9') continue;
        const auto place = static_cast<std::size_t>(form[i + 1] - '0');
        if (place > most) most = place;
    }
    return most;
}

/// A phrase that was checked while compiling: it has a place for each of `N` values.
template <std::size_t N>
struct PhraseOf {
    consteval PhraseOf(Phrase p) : phrase(p) {
        if (places_in(p.form) != N) throw std::logic_error("as many values as places");
    }
    Phrase phrase;
};

class Sentence {
  public:
    Sentence() = default;
    /// Words that stand as they are in every language.
    Sentence(std::string same_everywhere) : english_(std::move(same_everywhere)) {}
    Sentence(std::string_view same_everywhere) : english_(same_everywhere) {}
    Sentence(const char* same_everywhere) : english_(same_everywhere) {}
    template <class N>
        requires(std::is_integral_v<N> && !std::is_same_v<N, bool> && !std::is_same_v<N, char>)
    Sentence(N number) : english_(std::to_string(number)) {}

    Sentence(Phrase fixed) : phrase_(fixed), english_(fixed.english()) {}
    template <class... V>
        requires(sizeof...(V) > 0)
    Sentence(PhraseOf<sizeof...(V)> form, V&&... values)
        : phrase_(form.phrase), values_{Sentence(std::forward<V>(values))...} {
        put_together();
    }

    /// Parts one behind the other, such as sentences of a paragraph.
    static Sentence joined(std::vector<Sentence> parts, std::string_view between);
    /// The same form or joint with other values, as many as now.
    Sentence with(std::vector<Sentence> values) const;

    const std::string& english() const { return english_; }
    bool empty() const { return english_.empty(); }
    /// The form, empty for words that are the same everywhere and for joined parts.
    const Phrase& form() const { return phrase_; }
    /// What stands at %1, %2 ...; the parts, when they are joined by between().
    const std::vector<Sentence>& values() const { return values_; }
    const std::string& between() const { return between_; }

    /// Two sentences are the same when they read the same.
    friend bool operator==(const Sentence& a, const Sentence& b) { return a.english_ == b.english_; }
    friend bool operator==(const Sentence& a, std::string_view b) { return a.english_ == b; }
    friend bool operator==(const Sentence& a, const char* b) { return a.english_ == b; }
    friend bool operator==(const Sentence& a, const std::string& b) { return a.english_ == b; }

  private:
    void put_together();

    Phrase phrase_{};
    std::string english_;
    std::string between_;
    std::vector<Sentence> values_;
};

std::ostream& operator<<(std::ostream& out, const Sentence& sentence);

}  // namespace evenfall
