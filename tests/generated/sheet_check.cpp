// SPDX-License-Identifier: MIT
// The JSON sheet held against the job's own files, with sums of its own.
#include "trial.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace pelt::generated {
namespace {

using nlohmann::json;

/// Millimetres squared; what is summed has at most seven decimals.
bool same_area(double a, double b) {
    return std::abs(a - b) <= 1e-4 + 1e-12 * std::abs(a);
}

void check_areas(const json& sheet, Complaints& out) {
    double film = 0;
    double cut = 0;
    double wrapped = 0;
    for (const json& roll : sheet["rolls"]) {
        film += roll["length_mm"].get<double>() * roll["width_mm"].get<double>();
        for (const json& piece : roll["pieces"]) {
            cut += piece["cut_mm2"].get<double>();
            wrapped += piece["wrapped_mm2"].get<double>();
        }
    }
    const json& told = sheet["area_mm2"];
    if (!same_area(told["film"], film) || !same_area(told["cut"], cut) ||
        !same_area(told["wrapped"], wrapped) || !same_area(told["bleed"], cut - wrapped) ||
        !same_area(told["offcut"], film - cut))
        out.emplace_back("areas do not add up");
    if (film > 0 &&
        std::abs(sheet["waste_percent"].get<double>() - 100 * (film - wrapped) / film) > 2e-6)
        out.emplace_back("the waste is not what the areas say");
}

using PieceKey =
    std::tuple<std::string, std::string, int, std::string>; ///< panel, side, copy, inlay

std::map<PieceKey, int> wanted_of(const Job& job) {
    std::map<PieceKey, int> out;
    for (const Wanted& wanted : job.wanted)
        for (int copy = 1; copy <= wanted.copies; ++copy) {
            out[{wanted.panel, wanted.side, copy, ""}] = 0;
            for (const std::string& inlay : wanted.inlays)
                out[{wanted.panel, wanted.side, copy, inlay}] = 0;
        }
    return out;
}

/// Every wanted thing has its parts 1 … parts, each once, and nothing else is there.
void check_pieces(const Job& job, const json& sheet, Complaints& out) {
    std::map<PieceKey, int> parts_of = wanted_of(job);
    std::map<std::tuple<PieceKey, int>, int> seen;
    int number = 0;
    std::vector<int> numbers;
    for (const json& roll : sheet["rolls"])
        for (const json& piece : roll["pieces"]) {
            const PieceKey key{piece["panel"], piece["side"], piece["copy"],
                               piece["name"].is_null() ? "" : piece["name"].get<std::string>()};
            const auto found = parts_of.find(key);
            const int parts = piece["parts"];
            if (found == parts_of.end())
                out.push_back("a piece that nobody wants: " + std::get<0>(key));
            else if (found->second != 0 && found->second != parts)
                out.push_back("a piece with two numbers of parts: " + std::get<0>(key));
            else
                found->second = parts;
            if (++seen[{key, piece["part"]}] > 1)
                out.push_back("a piece that is there twice: " + std::get<0>(key));
            numbers.push_back(piece["number"]);
            ++number;
        }
    for (const auto& [key, parts] : parts_of) {
        if (parts == 0)
            out.push_back("a piece is missing: " + std::get<0>(key) + " " + std::get<1>(key));
        for (int part = 1; part <= parts; ++part)
            if (!seen.contains({key, part}))
                out.push_back("a part is missing: " + std::get<0>(key));
    }
    std::sort(numbers.begin(), numbers.end());
    for (int i = 0; i < number; ++i)
        if (numbers[static_cast<std::size_t>(i)] != i + 1) {
            out.emplace_back("pieces are not numbered from 1 without a gap");
            break;
        }
}

struct Box {
    std::int64_t left = 0, right = 0, low = 0, high = 0;
    int number = 0;
};

Box box_of(const json& piece) {
    const std::int64_t x = um(piece["at_mm"][0]);
    const std::int64_t y = um(piece["at_mm"][1]);
    return {x, x + um(piece["size_mm"][0]), y, y + um(piece["size_mm"][1]), piece["number"]};
}

void check_box_of_outline(const json& piece, const Box& box, Complaints& out) {
    Box around{box.right, box.left, box.high, box.low, 0};
    for (const json& point : piece["outline_mm"]) {
        around.left = std::min(around.left, um(point[0]));
        around.right = std::max(around.right, um(point[0]));
        around.low = std::min(around.low, um(point[1]));
        around.high = std::max(around.high, um(point[1]));
    }
    if (around.left != box.left || around.right != box.right || around.low != box.low ||
        around.high != box.high)
        out.push_back("piece " + std::to_string(box.number) + " is not as large as its outline");
}

void check_places(const Job& job, const json& roll, bool straight, Complaints& out) {
    const std::int64_t trim = um(roll["trim_mm"]);
    const std::int64_t top = um(roll["width_mm"]) - trim;
    const std::int64_t length = um(roll["length_mm"]);
    const auto stock = job.stock.find(roll["roll"].get<std::string>());
    std::vector<Box> boxes;
    for (const json& piece : roll["pieces"]) {
        boxes.push_back(box_of(piece));
        check_box_of_outline(piece, boxes.back(), out);
        const Box& box = boxes.back();
        const std::string name = "piece " + std::to_string(box.number);
        if (box.left < 0 || box.right > length || box.low < trim || box.high > top)
            out.push_back(name + " is not on the usable film");
        if (stock == job.stock.end())
            continue;
        for (const DrawnStretch& flaw : stock->second.flaws) // a thousandth for inches
            if (static_cast<double>(box.right) > flaw.from_mm * 1'000 + 4 &&
                static_cast<double>(box.left) < flaw.to_mm * 1'000 - 4)
                out.push_back(name + " lies over a flaw");
    }
    if (stock != job.stock.end() &&
        static_cast<double>(length) > stock->second.length_mm * 1'000 + 4)
        out.emplace_back("more is used of a roll than there is");
    if (!straight)
        return;
    for (std::size_t i = 0; i < boxes.size(); ++i)
        for (std::size_t k = 0; k < i; ++k)
            if (boxes[i].left < boxes[k].right && boxes[k].left < boxes[i].right &&
                boxes[i].low < boxes[k].high && boxes[k].low < boxes[i].high)
                out.emplace_back("two rectangles overlap");
}

} // namespace

void check_sheet(const Job& job, const json& sheet, Complaints& out) {
    const bool straight = sheet["by"] == "straight";
    if (straight == job.contour)
        out.emplace_back("it is not cut as was asked");
    check_areas(sheet, out);
    check_pieces(job, sheet, out);
    std::int64_t length = 0;
    std::int64_t fresh = 0;
    for (const json& roll : sheet["rolls"]) {
        length += um(roll["length_mm"]);
        fresh += roll["is_new"].get<bool>() ? um(roll["length_mm"]) : 0;
        check_places(job, roll, straight, out);
        if (straight)
            check_cuts(roll, out);
        if (!roll["available_mm"].is_null() && um(roll["length_mm"]) > um(roll["available_mm"]))
            out.emplace_back("a roll is longer than what is available");
    }
    if (um(sheet["length_mm"]) != length)
        out.emplace_back("the length is not the rolls' sum");
    if (um(sheet["bound_mm"]) > (fresh > 0 ? fresh : length))
        out.emplace_back("the bound is above the length");
}

} // namespace pelt::generated
