// SPDX-License-Identifier: MIT
#include "cli/man_page.hpp"

#include <chrono>

namespace pelt::cli {
namespace {

std::string two_digits(unsigned number) {
    return (number < 10 ? "0" : "") + std::to_string(number);
}

} // namespace

std::string iso_date(long long seconds_since_1970) {
    namespace chrono = std::chrono;
    const chrono::sys_seconds moment{chrono::seconds{seconds_since_1970}};
    const chrono::year_month_day day{chrono::floor<chrono::days>(moment)};
    return std::to_string(static_cast<int>(day.year())) + "-" +
           two_digits(static_cast<unsigned>(day.month())) + "-" +
           two_digits(static_cast<unsigned>(day.day()));
}

} // namespace pelt::cli
