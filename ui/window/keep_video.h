// SPDX-License-Identifier: GPL-3.0-or-later
// Where a session's video lies and how it stands to the recording, into the book.
#pragma once

#include "core/workspace/session_key.h"

namespace lapwright::bridge {
class BookQueue;
class VideoSource;
} // namespace lapwright::bridge

namespace lapwright::window {

// A video that is not open, or a file that is gone meanwhile, stays as the book has it.
void keep_video(bridge::BookQueue& book, const workspace::SessionKey& session, const bridge::VideoSource& from);

} // namespace lapwright::window
