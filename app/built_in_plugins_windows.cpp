// SPDX-License-Identifier: GPL-3.0-or-later
// Qt is linked into the program for Windows whole, and its plugins with it: the screen of Windows, and the icon's
// format.
#include <QtPlugin>

Q_IMPORT_PLUGIN(QWindowsIntegrationPlugin)
Q_IMPORT_PLUGIN(QSvgPlugin)
