// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QComboBox;

namespace evenfall::desktop {

class Session;

/// Lists the sites of the book in a box, "Name  (CODE)" with the code as data; what was chosen stays
/// chosen, else the first one is. Signals of the box go out as usual.
/// Tests: tests/app/desktop_question_test.cpp
void fill_sites(QComboBox& box, Session& session);

}  // namespace evenfall::desktop
