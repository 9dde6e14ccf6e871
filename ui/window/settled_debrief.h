// SPDX-License-Identifier: GPL-3.0-or-later
// Paper keeps what it once said: before the debrief is printed or saved, what is on its way to its page is waited for.
#pragma once

#include "core/workspace/present_pairing.h"

#include <QObject>
#include <functional>

namespace lapwright::window {

class Explaining;
class PageStack;

class SettledDebrief : public QObject {
    Q_OBJECT

  public:
    // All outlive it.
    SettledDebrief(PageStack& pages, const workspace::PresentPairing& pairing, const Explaining& explaining,
                   QObject* parent);

    // Shows the page and does the work once it says all that it will: laps that were picked or renamed compared, the
    // causes worked out, refused or called off.  Nothing is done when another page is asked for first, or other work.
    void then(std::function<void()> work);

  private:
    void go_on();

    PageStack& pages_;
    const workspace::PresentPairing& pairing_;
    std::function<void()> work_;
};

} // namespace lapwright::window
