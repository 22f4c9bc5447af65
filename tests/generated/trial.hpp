// SPDX-License-Identifier: MIT
// One drawn job, run through the program in every format, and what is wrong with what comes out.
#pragma once

#include "job.hpp"

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace pelt::generated {

using Complaints = std::vector<std::string>;

/// All that one run gave. A format that was not written is empty.
struct Outputs {
    int status = 0;
    double cpu_seconds = 0;
    std::string errors;
    std::string table, csv, json, markdown, svg;
    bool any() const { return !(table + csv + json + markdown + svg).empty(); }
};

/// Runs PELT_PROGRAM in a folder of its own; it is stopped after `most_seconds` of processor time.
Outputs run(const Job& job, int most_seconds);

/// Everything that is wrong; empty where all is right.
Complaints complaints_about(const Job& job, const Outputs& outputs);

// Parts of it.
void check_status(const Job& job, const Outputs& outputs, Complaints& out);
void check_sheet(const Job& job, const nlohmann::json& sheet, Complaints& out);
void check_cuts(const nlohmann::json& roll, Complaints& out);
void check_order(const nlohmann::json& sheet, Complaints& out);
void check_formats(const Job& job, const Outputs& outputs, const nlohmann::json& sheet,
                   Complaints& out);

/// Thousandths of a millimetre, as whole numbers.
inline std::int64_t um(const nlohmann::json& mm) {
    const double value = mm.get<double>() * 1'000;
    return static_cast<std::int64_t>(value < 0 ? value - 0.5 : value + 0.5);
}

} // namespace pelt::generated
