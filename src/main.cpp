// SPDX-License-Identifier: MIT
#include "cli/cli.hpp"

int main(int argc, char** argv) {
    return pelt::cli::run(argc, argv);
}
