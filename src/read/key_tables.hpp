// SPDX-License-Identifier: MIT
// The rows of the table of keys, file by file. Inside read/ only: everybody else asks keys.hpp.
#pragma once

#include "read/keys.hpp"

#include <vector>

namespace pelt::read {

std::vector<Key> vehicle_keys(); ///< those of parts among them
std::vector<Key> keys_of_parts(); ///< of openings, edges, seam lines, hardware and the like
std::vector<Key> like_keys_of_vehicles();
std::vector<Key> film_keys();
std::vector<Key> stock_keys();
std::vector<Key> shop_keys();
std::vector<Key> jobs_keys();

} // namespace pelt::read
