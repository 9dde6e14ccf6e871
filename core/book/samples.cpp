// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/samples.h"

#include "core/base/translation.h"
#include "core/book/deflate.h"
#include "core/book/packed_values.h"
#include "core/book/unit_text.h"

#include <algorithm>
#include <map>
#include <utility>

#include <sqlite3.h>

namespace lapwright::book {
namespace {

using base::said;
using recording::Channel;
using recording::Recording;

class Packer {
  public:
    template <typename Number>
    std::size_t add(const std::vector<Number>& numbers) {
        std::string bytes = packed(std::span<const Number>(numbers));
        const std::uint32_t crc = crc32_of(bytes);
        samples_.blocks.push_back({numbers.size(), crc, std::move(bytes)});
        return samples_.blocks.size() - 1;
    }

    // What several channels share is written once.
    template <typename Numbers>
    std::optional<std::size_t> add_shared(const std::shared_ptr<const Numbers>& numbers) {
        if (!numbers) return std::nullopt;
        const auto known = places_.find(numbers.get());
        if (known != places_.end()) return known->second;
        return places_[numbers.get()] = add(*numbers);
    }

    void add_channel(const Channel& channel) {
        const auto time = add_shared(channel.time_s);
        const auto lines = add_shared(channel.source_lines);
        samples_.channels.push_back({time, add(channel.values), lines});
    }

    PackedSamples finish() { return std::move(samples_); }

  private:
    PackedSamples samples_;
    std::map<const void*, std::size_t> places_;
};

std::optional<std::int64_t> place(std::optional<std::size_t> index) {
    return index ? std::optional(static_cast<std::int64_t>(*index)) : std::nullopt;
}

struct ReadBlock {
    std::size_t count = 0;
    std::string bytes;
};

// The block at a place, whole; nothing where the disk or the checksum says that it is damaged.
std::optional<ReadBlock> read_block(Database& database, SessionId id, std::int64_t place) {
    std::optional<ReadBlock> block;
    {
        Rows rows(database, "SELECT count, crc, bytes FROM block WHERE session_id = ? AND place = ?",
                  {static_cast<std::int64_t>(id), place});
        if (rows.next() && rows.whole(0) >= 0 && crc32_of(rows.blob(2)) == static_cast<std::uint64_t>(rows.whole(1)))
            block = ReadBlock{static_cast<std::size_t>(rows.whole(0)), std::string(rows.blob(2))};
    }
    // Damage costs this block; anything else stops the reading.
    if (!database.well() && database.outcome().error().what == damaged_book) static_cast<void>(database.take_outcome());
    return block;
}

// Blocks of one session, each read once, so that what was shared is shared again.
class Unpacker {
  public:
    Unpacker(Database& database, SessionId id) : database_(database), id_(id) {}

    std::optional<std::vector<double>> values(std::int64_t place) {
        const auto block = read_block(database_, id_, place);
        return block ? unpacked_values(block->bytes, block->count) : std::nullopt;
    }

    recording::Stamps stamps(std::int64_t place) {
        if (!stamps_.contains(place)) {
            auto numbers = values(place);
            stamps_[place] = numbers ? std::make_shared<const std::vector<double>>(std::move(*numbers)) : nullptr;
        }
        return stamps_[place];
    }

    recording::SourceLines lines(std::int64_t place) {
        if (!lines_.contains(place)) {
            const auto block = read_block(database_, id_, place);
            auto numbers = block ? unpacked_numbers(block->bytes, block->count) : std::nullopt;
            lines_[place] = numbers ? std::make_shared<const std::vector<std::uint32_t>>(std::move(*numbers)) : nullptr;
        }
        return lines_[place];
    }

  private:
    Database& database_;
    SessionId id_;
    std::map<std::int64_t, recording::Stamps> stamps_;
    std::map<std::int64_t, recording::SourceLines> lines_;
};

struct ChannelRow {
    Channel channel; // without numbers
    std::optional<std::int64_t> time;
    std::int64_t values = 0;
    std::optional<std::int64_t> lines;
};

std::vector<ChannelRow> channel_rows(Database& database, SessionId id) {
    std::vector<ChannelRow> all;
    Rows rows(database,
              "SELECT name, meaning, unit, unit_text, time_place, values_place, lines_place FROM channel "
              "WHERE session_id = ? ORDER BY place",
              {static_cast<std::int64_t>(id)});
    while (rows.next()) {
        ChannelRow row;
        row.channel.name = rows.text(0);
        row.channel.meaning = recording::parse_meaning(rows.text(1)).value_or(recording::Meaning::other);
        row.channel.source_unit = unit_of(rows.text(2));
        row.channel.source_unit_text = rows.text(3);
        row.time = rows.maybe_whole(4);
        row.values = rows.whole(5);
        row.lines = rows.maybe_whole(6);
        all.push_back(std::move(row));
    }
    return all;
}

bool fill(ChannelRow& row, Unpacker& blocks) {
    auto values = blocks.values(row.values);
    if (!values) return false;
    row.channel.values = std::move(*values);
    if (row.time) row.channel.time_s = blocks.stamps(*row.time);
    if (row.lines) row.channel.source_lines = blocks.lines(*row.lines);
    // A channel without its source lines is as good a channel; one without its stamps is none.
    return !row.time || (row.channel.time_s && row.channel.time_s->size() == row.channel.values.size());
}

} // namespace

PackedSamples pack_samples(const Recording& recording) {
    Packer packer;
    for (const Channel& channel : recording.channels)
        packer.add_channel(channel);
    return packer.finish();
}

void write_samples(Database& database, SessionId id, const Recording& recording, const PackedSamples& samples) {
    const auto session = static_cast<std::int64_t>(id);
    for (std::size_t i = 0; i < samples.blocks.size(); ++i) {
        const PackedBlock& block = samples.blocks[i];
        database.run("INSERT INTO block (session_id, place, count, crc, bytes) VALUES (?, ?, ?, ?, ?)",
                     {session, place(i), static_cast<std::int64_t>(block.count), static_cast<std::int64_t>(block.crc),
                      Blob{block.bytes}});
    }
    for (std::size_t i = 0; i < samples.channels.size(); ++i) {
        const Channel& channel = recording.channels[i];
        const PackedChannel& blocks = samples.channels[i];
        database.run("INSERT INTO channel VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                     {session, place(i), channel.name, recording::name(channel.meaning), unit_text(channel.source_unit),
                      channel.source_unit_text, place(blocks.time), place(blocks.values), place(blocks.lines)});
    }
}

bool has_damaged_samples(Database& database, SessionId id) {
    std::vector<std::int64_t> places;
    {
        Rows rows(database, "SELECT place FROM block WHERE session_id = ?", {static_cast<std::int64_t>(id)});
        while (rows.next())
            places.push_back(rows.whole(0));
    }
    return std::ranges::any_of(places, [&](std::int64_t place) { return !read_block(database, id, place); });
}

void read_samples(Database& database, SessionId id, Recording& recording) {
    Unpacker blocks(database, id);
    for (ChannelRow& row : channel_rows(database, id)) {
        if (fill(row, blocks))
            recording.channels.push_back(std::move(row.channel));
        else
            recording.warnings.push_back({.kind = recording::WarningKind::channel_damaged, .of = row.channel.name});
    }
}

std::optional<Channel> read_channel(Database& database, SessionId id, recording::Meaning meaning) {
    Unpacker blocks(database, id);
    for (ChannelRow& row : channel_rows(database, id)) {
        if (row.channel.meaning != meaning) continue;
        row.lines.reset();
        if (fill(row, blocks) && row.channel.time_s) return std::move(row.channel);
    }
    return std::nullopt;
}

int count_damaged_channels(Database& database) {
    std::vector<std::pair<std::int64_t, std::int64_t>> places;
    {
        Rows rows(database, "SELECT session_id, place FROM block", {});
        while (rows.next())
            places.emplace_back(rows.whole(0), rows.whole(1));
    }
    database.run("CREATE TEMP TABLE good (session_id INTEGER, place INTEGER, PRIMARY KEY (session_id, place))");
    for (const auto& [session, block] : places)
        if (read_block(database, SessionId{session}, block))
            database.run("INSERT INTO good VALUES (?, ?)", {session, block});
    const auto is_good = [](const std::string& column) {
        return "EXISTS (SELECT 1 FROM good WHERE good.session_id = channel.session_id AND place = " + column + ")";
    };
    const auto damaged = database.one_whole("SELECT count(*) FROM channel WHERE NOT " + is_good("values_place") +
                                            " OR (time_place IS NOT NULL AND NOT " + is_good("time_place") + ")");
    database.run("DROP TABLE good");
    return static_cast<int>(damaged.value_or(0));
}

std::vector<std::string> damaged_samples(Database& database, const base::Progress& progress) {
    std::vector<std::pair<std::int64_t, std::int64_t>> places;
    {
        Rows rows(database, "SELECT session_id, place FROM block ORDER BY session_id, place", {});
        while (rows.next())
            places.emplace_back(rows.whole(0), rows.whole(1));
    }
    std::vector<std::string> damaged;
    std::int64_t told = -1; // once a session
    for (std::size_t i = 0; i < places.size() && database.well(); ++i) {
        if (!base::go_on(progress, said("checking the samples"),
                         static_cast<double>(i) / static_cast<double>(places.size())))
            database.fail(base::cancelled());
        const auto [session, block] = places[i];
        if (read_block(database, SessionId{session}, block) || !database.well() || told == session) continue;
        told = session;
        Rows rows(database, "SELECT file_name FROM session WHERE id = ?", {session});
        damaged.push_back("samples of " + (rows.next() ? rows.text(0) : said("a session")) + " are damaged");
    }
    return damaged;
}

} // namespace lapwright::book
