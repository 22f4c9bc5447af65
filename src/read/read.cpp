// SPDX-License-Identifier: MIT
#include "read/read.hpp"

#include "read/yaml.hpp"

#include <charconv>
#include <cmath>
#include <fstream>
#include <iterator>

namespace pelt::read {
namespace {

std::optional<double> number(const Node* node) {
    if (node == nullptr || node->kind != Node::Kind::scalar)
        return std::nullopt;
    double value = 0;
    const char* end = node->text.data() + node->text.size();
    const auto [rest, error] = std::from_chars(node->text.data(), end, value);
    if (error != std::errc{} || !std::isfinite(value))
        return std::nullopt;
    if (rest == end || std::string_view(rest, end) == " mm")
        return value;
    return std::string_view(rest, end) == " m" ? std::optional(value * 1000) : std::nullopt;
}

Um um(const Node* node) {
    return static_cast<Um>(std::llround(number(node).value_or(0) * 1000));
}

std::optional<Panel> panel(const Entry& entry, Faults& faults) {
    const Node* size = entry.value.find("size");
    if (size == nullptr || size->items.size() != 2) {
        faults.push_back(
            {Severity::file, entry.place, entry.key, "has no size", "give size: [x, y]"});
        return std::nullopt;
    }
    const double x = number(&size->items[0]).value_or(0);
    const double y = number(&size->items[1]).value_or(0);
    Panel made;
    made.name = entry.key;
    made.place = entry.place;
    OutlineForm form;
    form.from_size = true;
    for (const Point corner : {Point{0, 0}, Point{x, 0}, Point{x, y}, Point{0, y}})
        form.segments.push_back({corner, std::nullopt, "", entry.place});
    made.form = form;
    if (const Node* forward = entry.value.find("forward"))
        made.forward = forward->text == "up"     ? Heading::up
                       : forward->text == "down" ? Heading::down
                       : forward->text == "left" ? Heading::left
                                                 : Heading::right;
    if (const Node* edges = entry.value.find("edges"))
        made.edges_none = edges->text == "none";
    return made;
}

} // namespace

Reading<std::shared_ptr<const Source>> load(const std::string& path) {
    Reading<std::shared_ptr<const Source>> out;
    std::ifstream file(path, std::ios::binary);
    auto source = std::make_shared<Source>();
    source->name = path;
    if (!file) {
        out.faults.push_back({Severity::access, {source, 0, 0}, "", "cannot be opened", ""});
        return out;
    }
    source->text.assign(std::istreambuf_iterator<char>(file), {});
    out.value = std::move(source);
    return out;
}

Reading<Vehicle> vehicle(std::shared_ptr<const Source> source) {
    Reading<Vehicle> out;
    const auto root = parse(source, out.faults);
    if (!root)
        return out;
    Vehicle made;
    made.file = source->name;
    if (const Node* name = root->find("vehicle"))
        made.name = name->text;
    made.demonstration = root->find("demonstration") != nullptr;
    if (const Node* panels = root->find("panels"))
        for (const Entry& entry : panels->entries)
            if (auto p = panel(entry, out.faults))
                made.panels.push_back(std::move(*p));
    if (!stops(out.faults))
        out.value = std::move(made);
    return out;
}

Reading<Film> film(std::shared_ptr<const Source> source) {
    Reading<Film> out;
    const auto root = parse(source, out.faults);
    if (!root)
        return out;
    Film made;
    made.file = source->name;
    if (const Node* name = root->find("film"))
        made.name = name->text;
    if (const Node* roll = root->find("roll")) {
        made.width = um(roll->find("width"));
        made.trim = um(roll->find("trim"));
        if (const Node* length = roll->find("length"))
            made.roll_length = um(length);
    }
    if (const Node* a = root->find("allowances")) {
        made.allowances.handling = {um(a->find("handling")),
                                    std::min<Um>(um(a->find("handling")), 15'000)};
        made.allowances.gap = um(a->find("gap"));
    }
    out.value = std::move(made);
    return out;
}

} // namespace pelt::read
