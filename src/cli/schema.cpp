// SPDX-License-Identifier: MIT
#include "cli/schema.hpp"

#include "model/error.hpp"
#include "read/keys.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <set>
#include <vector>

namespace pelt::cli {
namespace {

using read::In;
using read::Key;
using read::ValueKind;

std::string in_json(std::string_view text) {
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\')
            out += '\\';
        out += c;
    }
    return out + "\"";
}

std::string number_in_json(double value) {
    std::array<char, 32> out{};
    return {out.data(), std::to_chars(out.data(), out.data() + out.size(), value).ptr};
}

/// A map's name among the definitions: "a seam line" is "seam-line".
std::string definition_of(In map) {
    if (map == In::panel_allowances) // a film's are called the same
        return "allowances-of-a-panel";
    std::string name(read::name_of(map));
    for (const std::string_view article : {"a ", "an ", "the "})
        if (name.rfind(article, 0) == 0) {
            name.erase(0, article.size());
            break;
        }
    std::replace(name.begin(), name.end(), ' ', '-');
    return name;
}

std::string reference_to(In map) {
    return R"({"$ref": )" + in_json("#/$defs/" + definition_of(map)) + "}";
}

std::string any_of(const std::vector<std::string>& schemas) {
    std::string out = R"({"anyOf": [)";
    for (std::size_t i = 0; i < schemas.size(); ++i)
        out += (i == 0 ? "" : ", ") + schemas[i];
    return out + "]}";
}

std::string array_of(const std::string& items, int least, int most = 0) {
    return R"({"type": "array", "items": )" + items + R"(, "minItems": )" + std::to_string(least) +
           (most > 0 ? R"(, "maxItems": )" + std::to_string(most) : "") + "}";
}

/// What is written on one line. Readers of YAML take some of it for numbers, dates or truth.
const std::string& scalar() {
    static const std::string any = R"({"type": ["string", "number", "boolean"]})";
    return any;
}

/// A number bare or with a unit or sign behind it. A bare number is in the file's unit, which is at
/// least a millimetre: no figure in it is larger than the bound in millimetres.
std::string quantity(const Key& key) {
    std::string out = R"({"type": ["number", "string"])";
    if (key.bounded())
        out += R"(, "minimum": )" + number_in_json(std::min(key.low, 0.0)) + R"(, "maximum": )" +
               number_in_json(key.high);
    return out + "}";
}

std::string choice_in(const std::vector<std::string_view>& words) {
    std::string out;
    bool truth = false;
    for (const std::string_view word : words) {
        out += (out.empty() ? "" : ", ") + in_json(word);
        truth = truth || word == "yes" || word == "no";
    }
    return R"({"enum": [)" + out + (truth ? ", true, false" : "") + "]}";
}

std::string whole_number(const Key& key) {
    std::string out = R"({"type": ["integer", "string"])";
    if (key.bounded())
        out += R"(, "minimum": )" + number_in_json(key.low) + R"(, "maximum": )" +
               number_in_json(key.high);
    return out + "}";
}

/// Points, and points that arcs or names belong to.
std::string outline(const Key& key) {
    return array_of(any_of({array_of(quantity(key), 2, 2), reference_to(In::point)}), 2);
}

/// A map whose single figure may stand in its place has bounds.
std::string map_or_figure(const Key& key) {
    const std::string map = reference_to(*key.of);
    return key.bounded() ? any_of({map, quantity(key)}) : map;
}

/// Names that the user chooses. An edge may be a length alone, and all edges one length or `none`; a
/// panel or a part that is like another vehicle's may be `no`.
std::string named(const Key& key) {
    const std::string maps = R"({"type": "object", "additionalProperties": )" +
                             any_of({reference_to(*key.of), scalar()}) + "}";
    return key.of == In::edge ? any_of({maps, scalar()}) : maps;
}

std::string schema_of(const Key& key) {
    switch (key.kind) {
    case ValueKind::text:
    case ValueKind::name:
    case ValueKind::body:
    case ValueKind::panel_kind:
    case ValueKind::currency:
    case ValueKind::duration:
    case ValueKind::date:
    case ValueKind::money:
        return scalar();
    case ValueKind::names:
    case ValueKind::dates:
        return any_of({scalar(), array_of(scalar(), 0)});
    case ValueKind::yes_no:
        return choice_in({"yes", "no"});
    case ValueKind::choice:
        // A scan's way forward is a direction in its own frame.
        return key.in == In::panel && key.name == "forward"
                   ? any_of({choice_in(read::choices_of(key)), array_of(scalar(), 3, 3)})
                   : choice_in(read::choices_of(key));
    case ValueKind::words:
        return any_of({choice_in(read::choices_of(key)),
                       array_of(choice_in(read::choices_of(key)), 0)});
    case ValueKind::count:
        return whole_number(key);
    case ValueKind::number:
    case ValueKind::length:
    case ValueKind::percent:
        return quantity(key);
    case ValueKind::point:
        return array_of(quantity(key), 2, 2);
    case ValueKind::size:
        return any_of({array_of(quantity(key), 2, 2), R"({"type": "string"})"});
    case ValueKind::outline:
        return outline(key);
    case ValueKind::line:
        return array_of(array_of(quantity(key), 2, 2), 2);
    case ValueKind::corners:
        return array_of(array_of(quantity(key), 2, 2), 2, 2);
    case ValueKind::vector:
        return array_of(scalar(), 3, 3);
    case ValueKind::map:
        return map_or_figure(key);
    case ValueKind::list:
        // Where nothing is to be listed a file may say `none`.
        return any_of({array_of(reference_to(*key.of), 0), R"({"const": "none"})"});
    case ValueKind::named:
        return named(key);
    case ValueKind::durations:
        return R"({"type": "object", "additionalProperties": )" + scalar() + "}";
    }
    throw ProgramError("a key of no kind");
}

std::string property(const Key& key, std::string_view name, bool older) {
    std::string text(key.text);
    if (!key.unstated.empty())
        text += " Without it: " + std::string(key.unstated) + ".";
    std::string schema = schema_of(key);
    schema.insert(1, R"("description": )" + in_json(text) + (older ? R"(, "deprecated": true)" : "") +
                         ", ");
    return "        " + in_json(name) + ": " + schema;
}

std::string definition(In map) {
    std::string properties;
    std::string required;
    const auto add = [&](const std::string& text) {
        properties += (properties.empty() ? "\n" : ",\n") + text;
    };
    for (const Key* key : read::keys_of(map)) {
        if (!key->works)
            continue;
        add(property(*key, key->name, false));
        if (!key->also.empty())
            add(property(*key, key->also, true));
        else if (key->required)
            required += (required.empty() ? "" : ", ") + in_json(key->name);
    }
    return "    " + in_json(definition_of(map)) + ": {\n      \"type\": \"object\",\n" +
           "      \"properties\": {" + properties + "\n      },\n" +
           (required.empty() ? "" : "      \"required\": [" + required + "],\n") +
           "      \"additionalProperties\": false\n    }";
}

/// The maps that a file may hold, each after the one that leads to it.
void gather(In map, std::vector<In>& found) {
    if (std::find(found.begin(), found.end(), map) != found.end())
        return;
    found.push_back(map);
    for (const Key* key : read::keys_of(map)) {
        if (key->works && key->kind == ValueKind::outline)
            gather(In::point, found);
        if (key->works && key->of)
            gather(*key->of, found);
    }
}

std::vector<In> tops_of(read::FileKind kind) {
    switch (kind) {
    case read::FileKind::vehicle:
        return {In::vehicle};
    case read::FileKind::film:
        return {In::film};
    case read::FileKind::stock:
        return {In::stock};
    case read::FileKind::shop:
        return {In::shop};
    case read::FileKind::jobs:
        return {In::jobs, In::job}; // a list of jobs, or one a document
    }
    throw ProgramError("a file of no kind");
}

} // namespace

std::string schema_of(read::FileKind kind) {
    std::vector<In> maps;
    std::vector<std::string> tops;
    for (const In top : tops_of(kind)) {
        gather(top, maps);
        tops.push_back(reference_to(top));
    }
    std::string definitions;
    for (const In map : maps)
        definitions += (definitions.empty() ? "" : ",\n") + definition(map);
    const std::string whole = any_of(tops);
    return "{\n  \"$schema\": \"https://json-schema.org/draft/2020-12/schema\",\n  \"title\": " +
           in_json("A " + std::string(read::name_of(kind)) + " file of pelt") + ",\n  " +
           whole.substr(1, whole.size() - 2) + ",\n  \"$defs\": {\n" + definitions +
           "\n  }\n}\n";
}

} // namespace pelt::cli
