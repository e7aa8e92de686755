// Put before every C++ file when better-sqlite3 is compiled. From 24.19 on, Node's node::ObjectWrap takes a cleanup hook
// back in its destructor, and Node aborts when the garbage collector calls that outside of JavaScript: a server then
// dies minutes after its start (nodejs/node issue 65446). This leaves the class as it was before. Node's own hooks, and
// better-sqlite3's, are declared and used under their own names. With an older Node it changes nothing.
// Wanted until better-sqlite3 13 can be used, which needs Node 22.14.
#pragma once
#include <node.h>

namespace node {
inline void NoCleanupHook(v8::Isolate*, void (*)(void*), void*) {}
}  // namespace node

#define AddEnvironmentCleanupHook NoCleanupHook
#define RemoveEnvironmentCleanupHook NoCleanupHook
#include <node_object_wrap.h>
#undef AddEnvironmentCleanupHook
#undef RemoveEnvironmentCleanupHook
