-- SPDX-License-Identifier: GPL-3.0-or-later
-- A kept pairing is worked out anew from its samples; what was shown of it is no longer kept.

DROP TABLE kept_view;
