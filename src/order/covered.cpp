// SPDX-License-Identifier: MIT
// What a job covers, for those who pay for it.
#include "order/order.hpp"
#include "order/parts_off.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace pelt::order {
namespace {

void add_once(std::vector<std::string>& names, const std::string& name) {
    if (std::find(names.begin(), names.end(), name) == names.end())
        names.push_back(name);
}

/// "front door", where all its sides are meant, else "front door, left".
std::string name_with_sides(const Panel& panel, const std::set<Side>& sides) {
    if (sides.size() == sides_of(panel.sides).size())
        return panel.name;
    std::string text = panel.name;
    for (const Side side : sides)
        text += ", " + std::string(name_of(side));
    return text;
}

using SidesOfPanels = std::map<std::pair<int, int>, std::set<Side>>;

std::vector<std::string> names_of(const Job& job, const SidesOfPanels& panels) {
    std::vector<std::string> out;
    for (const auto& [place, sides] : panels)
        add_once(out, name_with_sides(job.vehicles[static_cast<std::size_t>(place.first)]
                                          .panels[static_cast<std::size_t>(place.second)],
                                      sides));
    return out;
}

SidesOfPanels covered_by(const Job& job) {
    SidesOfPanels out;
    for (const Piece& piece : job.pieces)
        for (const PieceId& id : piece.ids)
            out[{id.vehicle, id.panel}].insert(id.side);
    return out;
}

} // namespace

std::vector<LeftOut> left_out_of_all(const std::vector<FilmToQuote>& films) {
    std::vector<LeftOut> out = films.front().job->left_out;
    for (const FilmToQuote& film : films)
        std::erase_if(out, [&](const LeftOut& place) {
            const std::vector<LeftOut>& others = film.job->left_out;
            return !std::binary_search(others.begin(), others.end(), place);
        });
    return out;
}

Covered what_is_covered(const std::vector<FilmToQuote>& films) {
    Covered out;
    SidesOfPanels covered;
    SidesOfPanels left_out;
    for (const FilmToQuote& film : films) {
        const Job& job = *film.job;
        for (const auto& [place, sides] : covered_by(job))
            covered[place].insert(sides.begin(), sides.end());
        for (const LeftOut& left : job.left_out)
            if (left.is_whole_side())
                left_out[{left.vehicle, left.panel}].insert(left.side);
        for (const Seam& seam : job.seams)
            add_once(out.seams, job.vehicles[static_cast<std::size_t>(seam.vehicle)]
                                    .panels[static_cast<std::size_t>(seam.panel)]
                                    .name);
        for (const std::string& part : job.left_on)
            add_once(out.parts_on, part);
    }
    for (const auto& [place, sides] : covered) {
        const auto left = left_out.find(place);
        if (left == left_out.end())
            continue;
        for (const Side side : sides)
            left->second.erase(side);
        if (left->second.empty())
            left_out.erase(left);
    }
    const Job& job = *films.front().job;
    out.parts_off = coming_off(job.vehicles, left_out_of_all(films), out.parts_on);
    out.panels = names_of(job, covered);
    out.left_out = names_of(job, left_out);
    return out;
}

} // namespace pelt::order
