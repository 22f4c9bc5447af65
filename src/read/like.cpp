// SPDX-License-Identifier: MIT
#include "read/like.hpp"

#include "model/marked_length.hpp"
#include "read/document.hpp"
#include "read/quantities.hpp"
#include "read/source_beside.hpp"
#include "read/stays_inside.hpp"
#include "trade/likeness.hpp"

#include <array>
#include <cmath>
#include <filesystem>
#include <system_error>

namespace pelt::read {
namespace {

namespace fs = std::filesystem;

fs::path folder_of(const std::string& file) {
    return file == "-" ? fs::path() : fs::path(file).parent_path();
}

std::shared_ptr<const Source> told(Reading<std::shared_ptr<const Source>> loaded,
                                   Context& context) {
    context.files.insert(context.files.end(), loaded.files.begin(), loaded.files.end());
    context.add(std::move(loaded.faults));
    return loaded.value.value_or(nullptr);
}

std::shared_ptr<const Source> installed_source(const Entry& like, const FindInstalled& find,
                                               Context& context) {
    const std::string& name = like.value.text;
    Faults doubts;
    const auto path = find ? find(name, doubts) : std::nullopt;
    for (Fault& doubt : doubts) {
        doubt.place = like.value.place;
        context.add({std::move(doubt)});
    }
    if (!doubts.empty())
        return nullptr;
    if (!path) {
        context.add({{Severity::access, like.value.place, "",
                      "there is no file " + pelt::read::quoted(name) +
                          " beside this one, and no installed vehicle of that name",
                      "'pelt list' shows what is installed"}});
        return nullptr;
    }
    return told(load(*path), context);
}

std::shared_ptr<const Source> source_of(const Entry& like, const FindInstalled& find,
                                        Context& context) {
    const std::string& name = like.value.text;
    if (!stays_inside(name)) {
        context.fault(like.value.place,
                      "the vehicle " + pelt::read::quoted(name) + " is not in this file's folder",
                      "put it beside this file, or in a folder below");
        return nullptr;
    }
    std::error_code error;
    const bool beside =
        fs::exists(fs::symlink_status(folder_of(like.place.source->name) / name, error));
    if (!beside)
        return installed_source(like, find, context);
    return told(source_beside(like.value.place, name, "the vehicle " + pelt::read::quoted(name),
                              {"the vehicle file", "give a vehicle file", "make it smaller"}),
                context);
}

} // namespace

std::optional<Other> read_other(const Entry& like, const FindInstalled& find, Context& context) {
    if (like.value.kind != Node::Kind::scalar || like.value.text.empty())
        return std::nullopt; // told by its key
    const std::shared_ptr<const Source> source = source_of(like, find, context);
    if (!source)
        return std::nullopt;
    std::optional<Node> root;
    Reading<Vehicle> alone =
        read_file<Vehicle>(source, FileKind::vehicle, [&](const Node& whole, Context& others) {
            root = whole;
            return whole.entry("like") == nullptr ? read_alone(whole, others) : Vehicle{};
        });
    context.files.insert(context.files.end(), alone.files.begin(), alone.files.end());
    if (root && root->entry("like") != nullptr) {
        context.fault(like.value.place,
                      pelt::read::quoted(like.value.text) + " is like another vehicle itself",
                      "name the one that was measured");
        return std::nullopt;
    }
    if (!root || !alone.value) {
        context.fault(like.value.place,
                      "the vehicle " + pelt::read::quoted(like.value.text) +
                          " that this one is like is wrong",
                      "'pelt check' on it tells what to mend");
        return std::nullopt;
    }
    return Other{source, *std::move(alone.value), *std::move(root)};
}

Growth growth_to(Overall& own, const Vehicle& other, const Place& place, Context& context) {
    struct Side {
        std::string_view name;
        std::optional<double>& own;
        std::optional<double> others;
        double grown = 1;
    };
    std::array<Side, 3> sides{{{"length", own.length_mm, other.overall.length_mm},
                               {"width", own.width_mm, other.overall.width_mm},
                               {"height", own.height_mm, other.overall.height_mm}}};
    for (Side& side : sides) {
        const std::string name(side.name);
        if (side.own && !side.others) {
            context.fault(place, "the other vehicle does not say its overall " + name,
                          "add 'overall: {" + name + ": ...}' to " +
                              pelt::read::quoted(other.file));
            continue;
        }
        if (!side.own) {
            side.own = side.others;
            continue;
        }
        side.grown = *side.own / *side.others;
        if (side.grown > trade::unlike || side.grown < 1 / trade::unlike)
            context.fault(place,
                          "the overall " + name + ", " + marked_mm(*side.own, Told::nearest) +
                              ", is nothing like the other vehicle's " +
                              marked_mm(*side.others, Told::nearest),
                          "check it and its unit, or choose a vehicle that is more like it");
    }
    const double off = 100 * std::abs(sides[1].grown - 1);
    if (off > trade::mirrors_percent && sides[1].grown <= trade::unlike)
        context.add({{Severity::warning, place, "",
                      "the overall width, " + marked_mm(*own.width_mm, Told::nearest) + ", is " +
                          std::to_string(std::lround(off)) + " % " +
                          (sides[1].grown > 1 ? "more" : "less") + " than the other vehicle's " +
                          marked_mm(*other.overall.width_mm, Told::nearest),
                      "were the mirrors counted? It is meant without them"}});
    return {sides[0].grown, sides[1].grown, 1 + trade::upright_share * (sides[2].grown - 1)};
}

void be_like(Panel& panel, const Growth& growth, const Stretched& inherited) {
    const auto along = [&](trade::Axis axis) {
        return axis == trade::Axis::length  ? growth.length
               : axis == trade::Axis::width ? growth.width
                                            : growth.height;
    };
    panel.guessed = inherited.form;
    if (trade::keeps_its_size(panel))
        return;
    const trade::PanelAxes axes = trade::axes_of(panel);
    stretch(panel, {along(axes.x), along(axes.y)}, inherited);
}

} // namespace pelt::read
