// SPDX-License-Identifier: MIT
#include "panel.hpp"

#include <cstdlib>

namespace pelt::generated {
namespace {

/// A sheet of so many by so many quads that bulges outwards (+y), x to the nose, z up; now and
/// then with a hole in its middle. Whole numbers, so that all machines write the same file.
struct Sheet {
    int columns = 4;
    int rows = 4;
    int step_x = 60;
    int step_z = 50;
    int rise_x = 10; ///< in the middle, along x
    int rise_z = 10;
    bool hole = false;

    int bulge(int at, int most, int rise) const {
        return rise - rise * (2 * at - most) * (2 * at - most) / (most * most);
    }
    bool is_left_out(int i, int k) const {
        return hole && std::abs(2 * i + 1 - columns) <= 1 && std::abs(2 * k + 1 - rows) <= 1;
    }
    std::string bytes() const;
};

std::string Sheet::bytes() const {
    std::string text = "# invented\n";
    for (int k = 0; k <= rows; ++k)
        for (int i = 0; i <= columns; ++i)
            text += "v " + std::to_string(i * step_x) + " " +
                    std::to_string(bulge(i, columns, rise_x) + bulge(k, rows, rise_z)) + " " +
                    std::to_string(k * step_z) + "\n";
    const auto point = [this](int i, int k) { return std::to_string(k * (columns + 1) + i + 1); };
    for (int k = 0; k < rows; ++k)
        for (int i = 0; i < columns; ++i)
            if (!is_left_out(i, k)) // seen from +y, x runs to the left
                text += "f " + point(i, k) + " " + point(i, k + 1) + " " + point(i + 1, k + 1) +
                        " " + point(i + 1, k) + "\n";
    return text;
}

} // namespace

Form draw_scan(Draw& draw, const std::string& scan_name) {
    Sheet sheet;
    sheet.columns = draw.within(4, 9);
    sheet.rows = draw.within(4, 8);
    sheet.step_x = draw.within(20, 110);
    sheet.step_z = draw.within(20, 90);
    sheet.rise_x = sheet.step_x * draw.within(0, 50) / 100;
    sheet.rise_z = sheet.step_z * draw.within(0, 50) / 100;
    sheet.hole = draw.one_in(3);
    Form form;
    form.is_scan = true;
    form.has_hole = sheet.hole;
    form.scan = sheet.bytes();
    form.edges = {"top", "bottom", "left", "right"};
    form.text =
        joined({"surface: ", scan_name, ", surface units: mm, forward: [1, 0, 0], up: [0, 0, 1]",
                draw.one_in(2) ? ", outside: [0, 1, 0]" : ""});
    return form;
}

} // namespace pelt::generated
