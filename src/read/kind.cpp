// SPDX-License-Identifier: MIT
#include "read/kind.hpp"

#include "read/yaml.hpp"

namespace pelt::read {
namespace {

Fault at_top(const std::shared_ptr<const Source>& source, std::string what, std::string remedy) {
    return {Severity::file, {source, 1, 1}, "", std::move(what), std::move(remedy)};
}

} // namespace

Reading<FileKind> kind_of(std::shared_ptr<const Source> source) {
    Reading<FileKind> out;
    const std::optional<Node> root = parse(source, out.faults);
    if (!root)
        return out;
    const bool is_vehicle = root->find("vehicle") != nullptr;
    const bool is_film = root->find("film") != nullptr;
    if (is_vehicle && is_film)
        out.faults.push_back(
            at_top(source, "names both a vehicle and a film", "keep them in a file each"));
    else if (is_vehicle || is_film)
        out.value = is_vehicle ? FileKind::vehicle : FileKind::film;
    else
        out.faults.push_back(at_top(source, "names neither a vehicle nor a film",
                                    "begin with 'vehicle: NAME' or 'film: NAME'"));
    return out;
}

} // namespace pelt::read
