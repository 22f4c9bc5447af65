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
    using namespace std::chrono;
    const year_month_day day{floor<days>(sys_seconds{seconds{seconds_since_1970}})};
    return std::to_string(static_cast<int>(day.year())) + "-" +
           two_digits(static_cast<unsigned>(day.month())) + "-" +
           two_digits(static_cast<unsigned>(day.day()));
}

} // namespace pelt::cli
