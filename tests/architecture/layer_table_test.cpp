// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/layer_table.h"

#include <gmock/gmock.h>

#include <filesystem>

namespace lapwright::architecture {
namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

// The real folders core/base, core/track, core/lap, app/commands and ui stand in for a sample tree.
const std::filesystem::path root = PROJECT_ROOT;

TEST(LayerTable, ReadsRowsAndFindsALayerByPath) {
    const LayerTable table = parse_layers("core/base: \nui/pages: core/base\nui/pages/compare: core/base ui/pages\n");
    EXPECT_EQ(table.at("ui/pages/compare").size(), 2U);
    EXPECT_EQ(layer_of(table, "ui/pages/compare/map.h"), "ui/pages/compare");
    EXPECT_EQ(layer_of(table, "ui/pages/causes/map.h"), "ui/pages");
    EXPECT_EQ(layer_of(table, "core/baseline/x.h"), std::nullopt);
    EXPECT_EQ(layer_of(table, "x.h"), std::nullopt);
}

TEST(LayerTable, RefusesACircle) {
    const Findings findings =
        check_table(parse_layers("core/base: core/lap\ncore/track: core/base\ncore/lap: core/track\n"), root);
    EXPECT_THAT(findings, ElementsAre(HasSubstr("circle: core/base -> core/lap -> core/track -> core/base")));
    EXPECT_THAT(check_table(parse_layers("core/base: core/base\n"), root),
                ElementsAre(HasSubstr("core/base -> core/base")));
}

TEST(LayerTable, RefusesWhatDoesNotExist) {
    EXPECT_THAT(check_table(parse_layers("core/nowhere: \n"), root),
                ElementsAre("layers.txt: core/nowhere has a row but there is no such folder"));
    EXPECT_THAT(check_table(parse_layers("core/lap: core/base\n"), root),
                ElementsAre("layers.txt: core/lap names core/base, which has no row"));
}

TEST(LayerTable, RefusesToReachUp) {
    const std::string rows = "core/base: \napp/commands: core/base\n";
    EXPECT_THAT(check_table(parse_layers(rows), root), IsEmpty());
    EXPECT_THAT(check_table(parse_layers(rows + "core/lap: app/commands\n"), root),
                Contains("layers.txt: core/lap may not be given app/commands"));
}

} // namespace
} // namespace lapwright::architecture
