// SPDX-License-Identifier: MIT
#include "read/mesh/mesh_file.hpp"

#include "read/mesh/words.hpp"

#include <algorithm>

namespace pelt::read {
namespace {

std::string ending_of(std::string_view name) {
    const std::size_t dot = name.rfind('.');
    std::string ending(dot == std::string_view::npos ? "" : name.substr(dot));
    for (char& c : ending)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return ending;
}

/// UTF-16 and other binary files under the name of a text.
void refuse_bytes(std::string_view text) {
    if (const std::size_t at = text.find('\0'); at != std::string_view::npos)
        throw BadMesh{"byte " + std::to_string(at) + ": is not a text in ASCII or UTF-8",
                      "export the scan again"};
}

geometry::Mesh parsed(const std::string& ending, std::string_view bytes) {
    if (bytes.empty())
        throw BadMesh{"is empty", "export the scan again"};
    if (ending == ".obj") {
        refuse_bytes(bytes);
        return read_obj(bytes);
    }
    if (ending == ".ply")
        return read_ply(bytes);
    if (ending == ".stl")
        return read_stl(bytes);
    throw BadMesh{"has an ending that is not known", "meshes are read as .obj, .ply and .stl"};
}

} // namespace

MeshRead parse_mesh(std::string_view name, std::string_view bytes) {
    try {
        return {parsed(ending_of(name), bytes), "", ""};
    } catch (const BadMesh& bad) {
        return {std::nullopt, bad.what, bad.remedy};
    }
}

} // namespace pelt::read
