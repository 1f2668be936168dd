// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sentences.h"

#include <algorithm>

namespace evenfall {

Sentence sentence_of(const std::vector<Issue>& issues) {
    constexpr std::size_t most = 20;
    std::vector<Sentence> lines;
    for (std::size_t i = 0; i < issues.size() && i < most; ++i) lines.push_back(issues[i].sentence());
    if (issues.size() > most) lines.emplace_back(PhraseOf<1>(phrase("core", "and %1 more")), issues.size() - most);
    if (lines.size() == 1) return lines.front();
    return Sentence::joined(std::move(lines), "\n");
}

std::vector<std::string> english_of(const std::vector<Sentence>& sentences) {
    std::vector<std::string> texts;
    for (const Sentence& sentence : sentences) texts.push_back(sentence.english());
    return texts;
}

void add_once(std::vector<Sentence>& sentences, const Sentence& sentence) {
    if (sentence.empty() || std::find(sentences.begin(), sentences.end(), sentence) != sentences.end()) return;
    sentences.push_back(sentence);
}

}  // namespace evenfall
