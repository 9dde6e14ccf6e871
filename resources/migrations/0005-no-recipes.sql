-- SPDX-License-Identifier: GPL-3.0-or-later
-- Recipes are files of a folder of their own, where window and command line find them; no book ever held one.

DROP TABLE recipe;
