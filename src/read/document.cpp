// SPDX-License-Identifier: MIT
#include "read/document.hpp"

#include "read/quantities.hpp"
#include "read/suggest.hpp"
#include "read/syntax.hpp"
#include "read/table/table.hpp"

#include <array>
#include <string>
#include <vector>

namespace pelt::read {
namespace {

constexpr std::array<FileKind, 5> kinds{FileKind::vehicle, FileKind::film, FileKind::stock,
                                        FileKind::shop, FileKind::jobs};

/// How a file of a kind begins.
std::string beginning(FileKind kind) {
    const std::string key(name_of(kind));
    const bool is_list = kind == FileKind::stock || kind == FileKind::jobs;
    return "begin it with '" + key + (is_list ? ": [...]'" : ": NAME'");
}

std::string article(FileKind kind) {
    return "a " + std::string(name_of(kind)) + " file";
}

std::string remedy_for(FileKind is, FileKind wanted) {
    if (is == FileKind::film && wanted == FileKind::vehicle)
        return "give the vehicle first and the film last";
    if (is == FileKind::vehicle && wanted == FileKind::film)
        return "give a film file after the vehicles";
    return "give " + article(wanted);
}

/// True when the file tells that it is of another kind.
bool tell_other_kind(const Node& root, FileKind wanted, Context& context) {
    if (root.entry(name_of(wanted)) != nullptr)
        return false;
    for (const FileKind kind : kinds)
        if (const Entry* entry = root.entry(name_of(kind))) {
            context.fault(entry->place,
                          "this is " + article(kind) + ", where " + article(wanted) + " belongs",
                          remedy_for(kind, wanted));
            return true;
        }
    return false;
}

/// True when the file is no map at all.
bool tell_no_keys(const Node& root, FileKind wanted, Context& context) {
    const std::string remedy = beginning(wanted);
    switch (root.kind) {
    case Node::Kind::map:
        return false;
    case Node::Kind::refused:
        return true;
    case Node::Kind::empty:
        context.fault(root.place, "the file is empty", remedy);
        return true;
    case Node::Kind::list:
        context.fault(root.place, "the file is a list", remedy);
        return true;
    case Node::Kind::scalar:
        break;
    }
    if (!root.quoted && lacks_blank(root.text))
        context.fault(root.place, "after the colon of " + quoted(root.text) + " a blank is missing",
                      "put one between the key and its value");
    else
        context.fault(root.place, "the file is not " + article(wanted), remedy);
    return true;
}

/// Only vehicles may be spreadsheets.
std::optional<Node> document_of_table(const std::shared_ptr<const Source>& source, FileKind kind,
                                      Context& context) {
    if (kind == FileKind::vehicle)
        return vehicle_table(source, context);
    context.fault({source, 0, 0}, "is a table, where " + article(kind) + " belongs",
                  "give a YAML file");
    return std::nullopt;
}

} // namespace

Unit unit_of_choice(std::size_t chosen) {
    constexpr std::array<Unit, 6> units{Unit::mm, Unit::cm, Unit::m, Unit::in, Unit::ft, Unit::yd};
    return units[chosen];
}

std::optional<Node> document(const std::shared_ptr<const Source>& source, FileKind kind,
                             Context& context) {
    if (source->is_table)
        return document_of_table(source, kind, context);
    Faults faults;
    std::optional<Node> root = parse(source, faults);
    context.add(std::move(faults));
    if (!root)
        return std::nullopt;
    if (tell_no_keys(*root, kind, context) || tell_other_kind(*root, kind, context))
        return std::nullopt;
    return root;
}

} // namespace pelt::read
