// SPDX-License-Identifier: MIT
// Both, because the header may have been read already, precompiled: it takes the first from the
// second only when it is read for the first time.
#define DOCTEST_CONFIG_IMPLEMENT
#define DOCTEST_CONFIG_IMPLEMENT_WITH_MAIN
#include <doctest/doctest.h>
