// SPDX-License-Identifier: MIT
// Prints a file that is made from the program's tables: make schema KIND, make completion TEMPLATE.
#include "cli/completion.hpp"
#include "cli/schema.hpp"
#include "model/error.hpp"

#include <exception>
#include <fstream>
#include <iostream>
#include <iterator>
#include <string>

namespace {

std::string schema(const std::string& kind) {
    using enum pelt::read::FileKind;
    for (const pelt::read::FileKind known : {vehicle, film, stock, shop, jobs})
        if (pelt::read::name_of(known) == kind)
            return pelt::cli::schema_of(known);
    throw pelt::ProgramError("no file is called " + kind);
}

std::string tables_for(const std::string& path) {
    if (path.ends_with(".bash.in"))
        return pelt::cli::tables_for_bash();
    if (path.ends_with(".zsh.in"))
        return pelt::cli::tables_for_zsh();
    if (path.ends_with(".fish.in"))
        return pelt::cli::tables_for_fish();
    throw pelt::ProgramError("no shell that is known");
}

std::string contents_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file)
        throw pelt::ProgramError("it cannot be opened");
    return {std::istreambuf_iterator<char>(file), {}};
}

/// The script with its tables in the place of the line that asks for them.
std::string completion(const std::string& path) {
    constexpr std::string_view wanted = "#TABLES#\n";
    std::string text = contents_of(path);
    const std::size_t at = text.find(wanted);
    if (at == std::string::npos)
        throw pelt::ProgramError("it asks for no tables");
    return text.replace(at, wanted.size(), tables_for(path));
}

} // namespace

int main(int argc, char** argv) {
    const std::string what = argc == 3 ? argv[1] : "";
    if (what != "schema" && what != "completion") {
        std::cerr << "usage: make schema KIND | completion TEMPLATE\n";
        return 2;
    }
    try {
        std::cout << (what == "schema" ? schema(argv[2]) : completion(argv[2])) << std::flush;
        return std::cout ? 0 : 1;
    } catch (const std::exception& error) {
        std::cerr << argv[2] << ": " << error.what() << '\n';
        return 1;
    }
}
