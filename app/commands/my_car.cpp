// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/my_car.h"

#include "app/commands/json_parts.h"
#include "core/analysis/my_side.h"
#include "core/book/my_car.h"
#include "core/workspace/own_files.h"

#include <filesystem>
#include <ostream>

namespace lapwright::commands {
namespace {

using base::Result;
using Mine = std::optional<car::Names>;

Result<Mine> read_mine(const std::string& file) {
    book::OpenOptions options;
    options.may_begin = false;
    auto opened = book::Book::open(file, options);
    if (!opened) return opened.error();
    book::Book book = std::move(opened).value();
    return book::my_car(book);
}

// Of the person's own book; nothing where there is none.
Mine own_mine(std::string& notes) {
    const auto file = workspace::own_book();
    std::error_code unknown;
    if (!file || !std::filesystem::exists(*file, unknown)) return std::nullopt;
    const auto mine = read_mine(*file);
    if (mine) return *mine;
    notes += base::one_line(mine.error()) + "; \"try next\" speaks to both drivers\n";
    return std::nullopt;
}

std::string table_of(const Mine& mine) {
    if (!mine)
        return "the book does not know which car is yours: name it with lapwright book my-car CAR, or choose it on the "
               "window's Causes page\n";
    return car::title_of(*mine) + " is yours\n";
}

} // namespace

Result<std::optional<causes::Side>> my_car_of(const Arguments& arguments, const analysis::Pairing& pairing,
                                              std::string& notes) {
    if (arguments.my_car) return arguments.my_car;
    const auto mine =
        arguments.book.book_file.empty() ? Result<Mine>(own_mine(notes)) : read_mine(arguments.book.book_file);
    if (!mine) return mine.error();
    const auto side = analysis::spoken_to(analysis::my_sides(*mine, pairing));
    if (side)
        notes += std::string("\"try next\" speaks to ") + (*side == causes::Side::a ? "A" : "B") + ": " +
                 car::title_of(**mine) + " is yours, says the book\n";
    return side;
}

int run_my_car(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err) {
    const auto& [driver, car] = arguments.my_car;
    Result<void> put;
    if (arguments.forget)
        put = book::put_my_car(book, std::nullopt);
    else if (!driver.empty() || !car.empty())
        put = book::put_my_car(book, arguments.my_car);
    const auto mine = put ? book::my_car(book) : Result<Mine>(put.error());
    if (!mine) {
        err << base::one_line(mine.error()) << "\n";
        return 1;
    }
    const car::Names names = mine->value_or(car::Names{});
    out << (arguments.json ? document_text({{"driver", text_or_null(names.driver)}, {"car", text_or_null(names.car)}})
                           : table_of(*mine));
    return 0;
}

} // namespace lapwright::commands
