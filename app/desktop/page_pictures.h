// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSize>
#include <QString>
#include <QStringList>
#include <QWidget>

/// Pictures of the window, for the guide and for looking at pages one after the other.
/// Used by app/packaging/screenshots/take.
namespace evenfall::desktop {

class MainWindow;
class Session;

/// Waits until nothing is worked on and two quiet moments have passed.
void wait_until_quiet(Session& session);
/// Draws the window as it is. @throws std::runtime_error when the file cannot be written
void write_picture(QWidget& window, const QString& file);
/// A picture of each of those pages (all when none is named) in two sizes, light and dark, into
/// `folder`: "sites-1280x800-light.png". The start page is shown without a book, the others with
/// that one. @return how many
int write_page_pictures(MainWindow& window, Session& session, const QString& book, const QString& folder,
                        const QStringList& pages);

}  // namespace evenfall::desktop
