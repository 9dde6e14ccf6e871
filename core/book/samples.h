// SPDX-License-Identifier: GPL-3.0-or-later
// A recording's numbers in the tables channel and block, within an edit or a look of the caller.
#pragma once

#include "core/base/progress.h"
#include "core/book/database.h"
#include "core/book/entries.h"
#include "core/recording/recording.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::book {

// A recording made ready to be written: packing takes longer than writing, and nobody shall wait for it.
struct PackedBlock {
    std::size_t count = 0;
    std::uint32_t crc = 0;
    std::string bytes;
};
struct PackedChannel {
    std::optional<std::size_t> time; // indices of blocks
    std::size_t values = 0;
    std::optional<std::size_t> lines;
};
struct PackedSamples {
    std::vector<PackedBlock> blocks;
    std::vector<PackedChannel> channels; // as many as the recording has
};

[[nodiscard]] PackedSamples pack_samples(const recording::Recording& recording);

void write_samples(Database& database, SessionId id, const recording::Recording& recording,
                   const PackedSamples& samples);
[[nodiscard]] bool has_damaged_samples(Database& database, SessionId id);
// Channels in their order.  A damaged one is left out and named in a warning "channel_damaged".
void read_samples(Database& database, SessionId id, recording::Recording& recording);

// The session's first channel of this meaning, where it is whole and has stamps.
[[nodiscard]] std::optional<recording::Channel> read_channel(Database& database, SessionId id,
                                                             recording::Meaning meaning);

// Each block whose bytes do not fit their checksum or cannot be read, in words.
[[nodiscard]] std::vector<std::string> damaged_samples(Database& database, const base::Progress& progress = {});
// Channels of which a block is missing or damaged.
[[nodiscard]] int count_damaged_channels(Database& database);

} // namespace lapwright::book
