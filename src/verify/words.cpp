// SPDX-License-Identifier: MIT
#include "verify/words.hpp"

namespace pelt::verify {
namespace {

std::string decimal(Um length) {
    const bool minus = length < 0;
    const Um size = minus ? -length : length;
    std::string fraction = std::to_string(size % um_per_mm);
    fraction.insert(0, 3 - fraction.size(), '0');
    return (minus ? "-" : "") + std::to_string(size / um_per_mm) + "." + fraction;
}

} // namespace

const Panel& panel_of(const Job& job, const PieceId& id) {
    return job.vehicles[static_cast<std::size_t>(id.vehicle)]
        .panels[static_cast<std::size_t>(id.panel)];
}

std::string called(const Job& job, const PieceId& id) {
    std::string text;
    if (job.vehicles.size() > 1)
        text = "vehicle " + std::to_string(id.vehicle + 1) + ", ";
    text += "panel '" + panel_of(job, id).name + "', " + std::string(name_of(id.side)) + ", copy " +
            std::to_string(id.copy);
    if (id.parts > 1)
        text += ", piece " + std::to_string(id.part) + " of " + std::to_string(id.parts);
    return id.kind == PieceKind::inlay ? text + ", inlay '" + id.inlay + "'" : text;
}

std::string called_whole(const Job& job, const PieceId& id) {
    PieceId whole = id;
    whole.part = whole.parts = 1;
    return called(job, whole);
}

std::string in_mm(Um length) {
    return decimal(length) + " mm";
}

std::string in_mm(GridPoint point) {
    return "(" + decimal(point.x) + ", " + decimal(point.y) + ")";
}

} // namespace pelt::verify
