// SPDX-License-Identifier: GPL-3.0-or-later
// A session's video in the book: kept, replaced, gone with its session, and found again where it was moved.
#include "core/book/videos.h"

#include "core/book/book_fixture.h"

#include <gtest/gtest.h>

namespace lapwright::book {
namespace {

namespace fs = std::filesystem;

std::string write(const Folder& folder, const std::string& name, std::size_t bytes, char filling) {
    std::ofstream(folder.file(name), std::ios::binary) << std::string(bytes, filling) << name;
    return folder.file(name);
}

KeptVideo video_at(const std::vector<std::string>& paths) {
    KeptVideo video;
    for (const std::string& path : paths)
        video.files.push_back(video_file(path).value());
    video.step = KeptStep{12.5, 12.4, 12.6, 1e-5, 300.0, "sound_and_engine_speed"};
    return video;
}

TEST(Videos, AreKeptAndReplaced) {
    const Folder folder;
    const KeptVideo video = video_at({write(folder, "a.mp4", 200'000, 'a'), write(folder, "b.mp4", 10, 'b')});
    const Checksum session = sha256_of("first");
    {
        Book book = open_book(folder.file("book"));
        EXPECT_EQ(video_of(book, session).value(), std::nullopt) << "no such session";
        add_named(book, "first", {"Wren Alder", "Plover", "Ternbank", 1.77e9, "dry", {}});
        ASSERT_TRUE(put_video(book, session, video));
    }
    Book book = open_book(folder.file("book"));
    EXPECT_EQ(video_of(book, session).value(), std::optional(video));
    KeptVideo without_step = video_at({video.files[0].path});
    without_step.step.reset();
    ASSERT_TRUE(put_video(book, session, without_step));
    EXPECT_EQ(video_of(book, session).value(), std::optional(without_step));
    ASSERT_TRUE(put_video(book, session, std::nullopt));
    EXPECT_EQ(video_of(book, session).value(), std::nullopt);
    EXPECT_TRUE(book.check()->whole());
}

TEST(Videos, AreFoundWhereTheyWereMoved) {
    const Folder folder;
    const KeptVideo video = video_at({write(folder, "a.mp4", 200'000, 'a')});
    fs::create_directory(folder.path() / "beside");
    const std::vector<std::string> folders{folder.file("beside")};
    EXPECT_EQ(locate(video, folders).value(), std::vector{folder.file("a.mp4")});
    fs::rename(folder.file("a.mp4"), folder.path() / "beside" / "a.mp4");
    EXPECT_EQ(locate(video, folders).value(), std::vector{folder.file("beside/a.mp4")});
    fs::rename(folder.path() / "beside" / "a.mp4", folder.path() / "beside" / "named anew.mp4");
    EXPECT_EQ(locate(video, folders).value(), std::vector{folder.file("beside/named anew.mp4")});
    // Another of the same length is not taken for it.
    fs::remove(folder.path() / "beside" / "named anew.mp4");
    write(folder, "beside/a.mp4", 200'000 - 7, 'b');
    const auto lost = locate(video, folders);
    ASSERT_FALSE(lost);
    EXPECT_EQ(lost.error().place.file, folder.file("a.mp4"));
}

TEST(Videos, AreKnownByLengthHeadAndTail) {
    const Folder folder;
    const VideoFile file = video_file(write(folder, "a.mp4", 300'000, 'a')).value();
    EXPECT_EQ(file.size_bytes, 300'005U);
    for (const std::streamoff place : {std::streamoff{5}, std::streamoff{300'000}}) {
        std::fstream change(folder.file("a.mp4"), std::ios::binary | std::ios::in | std::ios::out);
        change.seekp(place);
        change.put('!');
        change.close();
        EXPECT_NE(video_file(folder.file("a.mp4")).value().ends, file.ends);
        change.open(folder.file("a.mp4"), std::ios::binary | std::ios::in | std::ios::out);
        change.seekp(place);
        change.put('a');
        change.close();
    }
    EXPECT_FALSE(video_file(folder.file("nowhere")).ok());
}

} // namespace
} // namespace lapwright::book
