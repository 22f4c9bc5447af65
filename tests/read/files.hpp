// SPDX-License-Identifier: MIT
// Files given as text, and what is said about them.
#pragma once

#include "read/read.hpp"

#include <doctest/doctest.h>

#include <memory>
#include <string>
#include <vector>

namespace pelt::read_test {

inline std::shared_ptr<const Source> file(std::string text, std::string name = "t.yaml") {
    return std::make_shared<const Source>(Source{std::move(name), std::move(text)});
}

/// Every fault as it is printed, without the source line.
template <class T>
std::vector<std::string> told(const read::Reading<T>& reading) {
    std::vector<std::string> out;
    for (const Fault& fault : reading.faults)
        out.push_back(to_string(fault, false));
    return out;
}

/// A vehicle file of one panel 'hood' with these lines, each indented by four blanks.
inline std::string vehicle_with(const std::string& panel_lines) {
    std::string text = "vehicle: T\npanels:\n  hood:\n    ";
    for (const char c : panel_lines)
        text += c == '\n' ? std::string("\n    ") : std::string(1, c);
    return text + "\n";
}

/// The faults of a vehicle file, line by line.
inline std::string faults_of_vehicle(const std::string& text) {
    std::string out;
    for (const std::string& line : told(read::vehicle(file(text))))
        out += line + "\n";
    return out;
}

inline std::string faults_of_film(const std::string& text) {
    std::string out;
    for (const std::string& line : told(read::film(file(text))))
        out += line + "\n";
    return out;
}

/// The one panel of a vehicle file that is right.
inline Panel panel_of(const std::string& panel_lines) {
    const auto reading = read::vehicle(file(vehicle_with(panel_lines)));
    for (const std::string& line : told(reading))
        FAIL_CHECK(line);
    REQUIRE(reading.value.has_value());
    REQUIRE(reading.value->panels.size() == 1);
    return reading.value->panels.front();
}

} // namespace pelt::read_test
