// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/keep_video.h"

#include "core/book/videos.h"
#include "core/workspace/kept_step.h"
#include "ui/bridge/book_queue.h"
#include "ui/bridge/video_source.h"

namespace lapwright::window {

void keep_video(bridge::BookQueue& book, const workspace::SessionKey& session, const bridge::VideoSource& from) {
    if (!from.is_open()) return;
    book.edit_unasked([session, paths = from.paths(),
                       step = workspace::kept_step(from.step())](bridge::BookQueue::Book& own) -> base::Result<void> {
        book::KeptVideo video{{}, step};
        for (const std::string& path : paths) {
            auto file = book::video_file(path);
            if (!file) return {};
            video.files.push_back(std::move(file).value());
        }
        return book::put_video(own.book(), session.checksum, video);
    });
}

} // namespace lapwright::window
