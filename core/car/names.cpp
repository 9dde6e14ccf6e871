// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/names.h"

#include "core/base/plain_text.h"

namespace lapwright::car {
namespace {

std::string first_told(const std::string& in_sheet, const std::string& in_recording) {
    const std::string name = base::plain_name(in_sheet);
    return name.empty() ? base::plain_name(in_recording) : name;
}

} // namespace

Names names_of(const recording::Recording& recording, const SetupSheet& sheet) {
    return {first_told(sheet.driver, recording.driver), first_told(sheet.car, recording.car)};
}

void take_names(recording::Recording& recording, const SetupSheet& sheet) {
    Names names = names_of(recording, sheet);
    recording.driver = std::move(names.driver);
    recording.car = std::move(names.car);
}

std::string title_of(const Names& names) {
    if (names.driver.empty() || names.car.empty()) return names.driver + names.car;
    return names.driver + " — " + names.car;
}

} // namespace lapwright::car
