// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/page.h"

class QListWidget;

namespace evenfall::desktop {

/// What a first start offers: the demo book, a new book, or opening one; later, recent books.
class StartPage : public Page {
    Q_OBJECT

  public:
    explicit StartPage(Session& session, QWidget* parent = nullptr);
    void book_changed() override;

  Q_SIGNALS:
    void demo_wanted();
    void new_wanted();
    void open_wanted();
    void book_wanted(const QString& path);

  private:
    QListWidget* recent_;
    QLabel* none_;
    QLabel* how_;
};

}  // namespace evenfall::desktop
