// SPDX-License-Identifier: MIT
#include "report/words.hpp"

#include "order/order.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::report {

std::string panel_label(const Job& job, int vehicle, int panel) {
    const Vehicle& of = job.vehicles.at(static_cast<std::size_t>(vehicle));
    const std::string& name = of.panels.at(static_cast<std::size_t>(panel)).name;
    return job.vehicles.size() > 1 ? of.name + ": " + name : name;
}

std::string panel_label(const Job& job, int vehicle, int panel, Side side) {
    const std::string name = panel_label(job, vehicle, panel);
    return side == Side::centre ? name : name + ", " + std::string(name_of(side));
}

std::string label_of(const Job& job, const PieceId& id) {
    const Panel& panel = job.vehicles.at(static_cast<std::size_t>(id.vehicle))
                             .panels.at(static_cast<std::size_t>(id.panel));
    std::string text = panel_label(job, id.vehicle, id.panel);
    if (id.kind == PieceKind::inlay)
        text += ", inlay " + id.inlay;
    if (id.parts > 1)
        text += ", piece " + std::to_string(id.part) + " of " + std::to_string(id.parts);
    if (const std::string where = order::where_on_panel(job, id); !where.empty())
        text += " (" + where + ")";
    if (panel.faces == 2)
        text += id.copy % 2 == 0 ? ", inner face" : ", outer face";
    if (panel.count * job.times > 1)
        text += ", no. " + std::to_string((id.copy - 1) / panel.faces + 1);
    return text;
}

std::string full_label_of(const Job& job, const PieceId& id) {
    return label_of(job, id) +
           (id.side == Side::centre ? "" : ", " + std::string(name_of(id.side)));
}

std::string as_options_name(const Job& job, const LeftOut& what) {
    std::string text = panel_label(job, what.vehicle, what.panel);
    if (what.side != Side::centre)
        text += "/" + std::string(name_of(what.side));
    if (what.no != LeftOut::all)
        text += "/no " + std::to_string(what.no);
    if (what.piece > 0)
        text += "/" + std::to_string(what.piece);
    return what.piece == LeftOut::inlays ? text + " (inlays)" : text;
}

std::string place_text(const SeamPlace& place, const Measures& measures) {
    const std::string nearer = measures.size_with_unit(place.nearer);
    const std::string farther = measures.size_with_unit(place.farther);
    const std::string distance =
        nearer == farther ? nearer : "from " + measures.size(place.nearer) + " to " + farther;
    return (place.line.empty() ? "" : place.line + ", ") + place.run + ", " +
           distance + " from the " + place.edge;
}

std::string arrow_of(Turn turn) {
    switch (turn.millidegrees) {
    case 0:
        return "→";
    case 90'000:
        return "↑";
    case 180'000:
        return "←";
    case 270'000:
        return "↓";
    default:
        return std::to_string((turn.millidegrees + 500) / 1000) + "°";
    }
}

std::string sides_text(Sides sides) {
    switch (sides) {
    case Sides::left:
        return "left";
    case Sides::right:
        return "right";
    case Sides::both:
        return "left + right";
    case Sides::centre:
        break;
    }
    return "center";
}

std::string side_text(Side side) {
    return side == Side::centre ? "center" : std::string(name_of(side));
}

std::string direction_text(Direction direction) {
    switch (direction) {
    case Direction::one_way:
        return "The film lies one way: every arrow as the film arrow.";
    case Direction::two_way:
        return "The film lies either way: arrows as the film arrow or against it.";
    case Direction::any:
        return "The film may lie any way.";
    }
    return "";
}

std::string lying_otherwise(const Sheet& sheet) {
    std::vector<int> numbers;
    for (const PlacedPiece& p : pieces_by_number(sheet.plan)) {
        const bool against = p.turn.millidegrees == half_turn.millidegrees;
        const bool as_the_film = p.turn.millidegrees == 0 ||
                                 (against && sheet.plan.job().film.direction != Direction::one_way);
        if (!as_the_film && sheet.plan.job().film.direction != Direction::any)
            numbers.push_back(p.number);
    }
    if (numbers.empty())
        return "";
    return " Not along the arrow (allowed): " + number_runs(numbers) + ".";
}

std::string left_over_text(const FilmAway& film, const Roll& roll, const Measures& measures) {
    const Box& box = film.whole;
    const bool flawed = std::any_of(roll.flaws.begin(), roll.flaws.end(), [&](const Flaw& flaw) {
        const Box spoilt = box_of(flaw, roll.width);
        return spoilt.low.x < box.high.x && box.low.x < spoilt.high.x &&
               spoilt.low.y < box.high.y && box.low.y < spoilt.high.y;
    });
    return "left over " + measures.size(box.along(), Rounding::down) + " × " +
           measures.size(box.across(), Rounding::down) + (flawed ? ", flaw in it" : "");
}

std::string by_text(CutBy by) {
    return by == CutBy::straight ? "straight cuts, by hand"
                                 : "contour cuts, by plotter or template";
}

void add_once(std::vector<std::string>& names, const std::string& name) {
    if (std::find(names.begin(), names.end(), name) == names.end())
        names.push_back(name);
}

std::string listed(const std::vector<std::string>& names) {
    std::string text;
    for (const std::string& name : names)
        text += (text.empty() ? "" : ", ") + name;
    return text;
}

std::string number_runs(const std::vector<int>& numbers) {
    std::string text;
    for (std::size_t i = 0; i < numbers.size();) {
        std::size_t last = i;
        while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1)
            ++last;
        text += (text.empty() ? "" : ", ") + std::to_string(numbers[i]);
        if (last > i)
            text += (last == i + 1 ? ", " : "-") + std::to_string(numbers[last]);
        i = last + 1;
    }
    return text;
}

} // namespace pelt::report
