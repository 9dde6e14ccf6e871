// SPDX-License-Identifier: GPL-3.0-or-later
// Which thread comes first when there are more of them than processors.
#pragma once

namespace lapwright::platform {

// From now on the calling thread, and those that it starts, work behind the others: a window that has to answer a key
// does not wait for them.  Alone they are as quick as ever.  (setpriority(2), of which Linux says that it is of one
// thread; SetThreadPriority, which is not passed on to those that are started.)
void give_way();

} // namespace lapwright::platform
